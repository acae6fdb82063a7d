import { ActionIcon, Tooltip, useComputedColorScheme, useMantineColorScheme } from '@mantine/core';
import { IconMoon, IconSun } from '@tabler/icons-react';

/** Light for the counter's window, dark for the bench at night; kept on this machine. */
export function ThemeSwitch() {
  const { setColorScheme } = useMantineColorScheme();
  const dark = useComputedColorScheme('light') === 'dark';
  const label = dark ? 'Switch to the light theme' : 'Switch to the dark theme';
  return (
    <Tooltip label={label}>
      <ActionIcon
        variant="subtle"
        color="gray"
        size={42}
        aria-label={label}
        onClick={() => setColorScheme(dark ? 'light' : 'dark')}
      >
        {dark ? <IconSun size={22} aria-hidden /> : <IconMoon size={22} aria-hidden />}
      </ActionIcon>
    </Tooltip>
  );
}
