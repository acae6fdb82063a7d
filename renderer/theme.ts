import { type CSSVariablesResolver, createTheme, type MantineColorsTuple } from '@mantine/core';

/** The colour of the shop's door: between oil-can green and blue, dark enough for white words. */
const petrol: MantineColorsTuple = [
  '#e8f4f4',
  '#d2e8e9',
  '#a5d0d3',
  '#74b8bd',
  '#4ba5ab',
  '#2d939a',
  '#187f86',
  '#0f6a71',
  '#09565c',
  '#043f44',
];

/** Warm greys: cast iron and workshop paper, not office blue. */
const gray: MantineColorsTuple = [
  '#faf8f4',
  '#f3f0e9',
  '#e9e4da',
  '#dbd4c7',
  '#c4bbac',
  '#a19786',
  '#7a7164',
  '#5b5349',
  '#3e3830',
  '#26221d',
];

const dark: MantineColorsTuple = [
  '#ece7de',
  '#d0c9bc',
  '#b5ac9d',
  '#8e8577',
  '#5d564b',
  '#443e36',
  '#332e28',
  '#28241f',
  '#1f1c18',
  '#161411',
];

export const theme = createTheme({
  primaryColor: 'petrol',
  primaryShade: { light: 7, dark: 6 },
  colors: { petrol, gray, dark },
  white: '#fffefb',
  black: '#221e19',
  fontFamily:
    '"Noto Sans", "Noto Sans JP", "Noto Sans Further", "Segoe UI", "Hiragino Sans", "Microsoft YaHei", "PingFang SC", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Noto Color Emoji", "Noto Emoji"',
  fontFamilyMonospace: 'ui-monospace, "DejaVu Sans Mono", "Cascadia Mono", Menlo, monospace',
  headings: {
    fontWeight: '650',
    sizes: {
      h1: { fontSize: '1.6rem', lineHeight: '1.25' },
      h2: { fontSize: '1.2rem', lineHeight: '1.3' },
      h3: { fontSize: '1.05rem', lineHeight: '1.35' },
    },
  },
  defaultRadius: 'md',
  radius: { xs: '2px', sm: '4px', md: '7px', lg: '12px', xl: '24px' },
  focusRing: 'auto',
  cursorType: 'pointer',
  respectReducedMotion: true,
  components: {
    Badge: {
      defaultProps: { radius: 'sm', size: 'lg' },
      styles: {
        // A state's word is never cut off: it is the first of its three signs.
        root: {
          textTransform: 'none',
          fontWeight: 600,
          letterSpacing: 0,
          flexShrink: 0,
          minWidth: 'max-content',
        },
      },
    },
    // As tall as the field that it stands beside; the small one goes into a table's row.
    Button: {
      vars: () => ({
        root: { '--button-height-sm': '42px', '--button-height-compact-sm': '34px' },
      }),
    },
    Fieldset: { styles: { root: { marginInline: 0 }, legend: { fontWeight: 600 } } },
    Table: {
      defaultProps: {
        horizontalSpacing: 'md',
        verticalSpacing: 'xs',
        borderColor: 'var(--mantine-color-default-border)',
      },
      classNames: { table: 'tappet-table' },
    },
    Input: {
      classNames: { input: 'tappet-field' },
      // What is typed runs the way its first letter does.
      defaultProps: { attributes: { input: { dir: 'auto' } } },
    },
    SegmentedControl: { classNames: { root: 'tappet-segments' } },
    TextInput: { defaultProps: { size: 'md' } },
    Textarea: { defaultProps: { size: 'md', autosize: true, minRows: 2 } },
    Select: { defaultProps: { size: 'md', allowDeselect: false } },
    NumberInput: { defaultProps: { size: 'md' } },
    Paper: {
      styles: {
        root: {
          backgroundColor: 'var(--tappet-surface)',
          borderColor: 'var(--mantine-color-default-border)',
        },
      },
    },
    Modal: {
      defaultProps: {
        radius: 'md',
        closeButtonProps: { 'aria-label': 'Close' },
        transitionProps: { duration: 90 },
      },
      styles: {
        title: { fontWeight: 650, fontSize: '1.15rem', lineHeight: 1.3 },
        content: { background: 'var(--tappet-surface)' },
        header: { background: 'var(--tappet-surface)' },
      },
    },
    // Its placeholder is no menu item, and a menu may hold no other child; the first item takes the focus.
    Menu: { defaultProps: { withInitialFocusPlaceholder: false } },
    Drawer: { defaultProps: { closeButtonProps: { 'aria-label': 'Close' } } },
    Tooltip: { defaultProps: { withArrow: true, openDelay: 350 } },
    Anchor: { defaultProps: { underline: 'always' } },
    Notification: { defaultProps: { closeButtonProps: { 'aria-label': 'Close' } } },
  },
});

/** What Mantine's defaults miss of WCAG's contrast on our paper and iron. */
export const cssVariables: CSSVariablesResolver = () => ({
  variables: {},
  light: {
    '--mantine-color-body': '#f6f3ed',
    '--mantine-color-text': '#221e19',
    '--mantine-color-dimmed': gray[7],
    '--mantine-color-placeholder': gray[6],
    '--mantine-color-error': '#a81e1e',
    '--mantine-color-default-border': gray[3],
    '--mantine-color-anchor': petrol[7],
    '--tappet-surface': '#fffefb',
    '--tappet-surface-raised': '#fffefb',
    '--tappet-hover': '#efebe2',
    ...badgeText({
      red: '#8f1717',
      orange: '#8a3f04',
      yellow: '#6b4e00',
      green: '#1d5c2b',
      indigo: '#34409c',
      gray: gray[8],
      petrol: petrol[8],
    }),
  },
  dark: {
    '--mantine-color-body': dark[8],
    '--mantine-color-text': dark[0],
    '--mantine-color-dimmed': dark[2],
    '--mantine-color-placeholder': dark[3],
    '--mantine-color-error': '#ff9c94',
    '--mantine-color-default-border': dark[5],
    '--mantine-color-anchor': petrol[3],
    '--tappet-surface': dark[7],
    '--tappet-surface-raised': dark[6],
    '--tappet-hover': dark[6],
    ...badgeText({
      red: '#ffb3ab',
      orange: '#ffbf8a',
      yellow: '#f5d272',
      green: '#9ad9a6',
      indigo: '#bcc6ff',
      gray: dark[0],
      petrol: petrol[2],
    }),
    ...badgeGround(['red', 'orange', 'yellow', 'green', 'indigo', 'gray', 'petrol']),
  },
});

/** On iron a badge is tinted glass, not a second block of colour. */
function badgeGround(names: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    names.map((name) => [
      `--mantine-color-${name}-light`,
      `color-mix(in srgb, var(--mantine-color-${name}-5) 17%, transparent)`,
    ]),
  );
}

function badgeText(colors: Record<string, string>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(colors).map(([name, color]) => [`--mantine-color-${name}-light-color`, color]),
  );
}
