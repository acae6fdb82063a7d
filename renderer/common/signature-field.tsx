import { Button, Fieldset, Group, Input, Text, TextInput } from '@mantine/core';
import { IconEraser, IconPencilCheck } from '@tabler/icons-react';
import { useEffect, useRef } from 'react';
import SignaturePad from 'signature_pad';
import classes from './signature-field.module.css';

/** What the contract's SignatureInput takes: strokes on a box of width × height, or a name typed. */
export interface SignatureValue {
  name: string;
  strokes: { x: number; y: number }[][];
  width: number;
  height: number;
}

interface SignatureFieldProps {
  label: string;
  /** Null until somebody has signed. */
  value: SignatureValue | null;
  onChange: (value: SignatureValue | null) => void;
  /** Who is expected to sign; one key signs by that name. */
  suggestedName: string;
  error?: string;
}

const WIDTH = 400;
const HEIGHT = 120;

/** A hundredth of a unit is finer than any pen; more digits only make the paper heavier. */
const rounded = (value: number) => Math.round(value * 100) / 100;

/**
 * A signature by pen or finger, or by a typed name, which is the way with a keyboard alone. The value is
 * null until there is a name: a drawing takes the suggested one.
 */
export function SignatureField(props: SignatureFieldProps) {
  const { label, value, onChange, suggestedName, error } = props;
  const name = value?.name ?? '';
  const strokes = value?.strokes ?? [];
  const sign = (next: { name?: string; strokes?: SignatureValue['strokes'] }) => {
    const signed = { name, strokes, ...next, width: WIDTH, height: HEIGHT };
    onChange(signed.name === '' && signed.strokes.length === 0 ? null : signed);
  };

  return (
    <Fieldset variant="unstyled" legend={label} className={classes.field}>
      <Group gap="xs" align="flex-end" mb="xs">
        <TextInput
          label="Name of who signs"
          size="sm"
          className={classes.name}
          value={name}
          error={
            strokes.length > 0 && name.trim() === '' ? 'Add the name of who signed.' : undefined
          }
          onChange={(event) => sign({ name: event.currentTarget.value })}
          autoComplete="off"
        />
        {suggestedName !== '' && name !== suggestedName && (
          <Button
            variant="default"
            leftSection={<IconPencilCheck size={18} aria-hidden />}
            onClick={() => sign({ name: suggestedName })}
          >
            {/* One piece: a button parts its children and drops the space between them. */}
            <span>
              Sign as <bdi>{suggestedName}</bdi>
            </span>
          </Button>
        )}
        {value !== null && (
          <Button
            variant="subtle"
            leftSection={<IconEraser size={18} aria-hidden />}
            onClick={() => onChange(null)}
          >
            Clear
          </Button>
        )}
      </Group>
      <Pad
        strokes={strokes}
        typedName={name}
        onStrokes={(drawn) => sign({ strokes: drawn, name: name === '' ? suggestedName : name })}
      />
      <Text size="xs" c="dimmed" mt={4}>
        Sign in the box with pen or finger, or type the name: a typed name counts as the signature.
      </Text>
      {error !== undefined && <Input.Error mt={4}>{error}</Input.Error>}
    </Fieldset>
  );
}

interface PadProps {
  strokes: SignatureValue['strokes'];
  typedName: string;
  onStrokes: (strokes: SignatureValue['strokes']) => void;
}

function Pad({ strokes, typedName, onStrokes }: PadProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const pad = useRef<SignaturePad>(null);
  const report = useRef(onStrokes);
  report.current = onStrokes;
  const shown = strokes.length;

  useEffect(() => {
    const surface = canvas.current;
    if (surface === null) return;
    const sharp = Math.max(1, window.devicePixelRatio);
    surface.width = WIDTH * sharp;
    surface.height = HEIGHT * sharp;
    surface.getContext('2d')?.scale(sharp, sharp);
    const drawn = new SignaturePad(surface, { penColor: '#1c2b4a', minWidth: 0.8, maxWidth: 2.4 });
    pad.current = drawn;
    const ended = () => {
      report.current(
        drawn
          .toData()
          .map((stroke) => stroke.points.map(({ x, y }) => ({ x: rounded(x), y: rounded(y) }))),
      );
    };
    drawn.addEventListener('endStroke', ended);
    return () => {
      drawn.removeEventListener('endStroke', ended);
      drawn.off();
    };
  }, []);

  // A kept draft brings its strokes along; clearing takes them off the pad.
  useEffect(() => {
    const drawn = pad.current;
    if (drawn === null || drawn.toData().length === shown) return;
    drawn.clear();
    if (shown > 0)
      drawn.fromData(
        strokes.map((points) => ({
          penColor: '#1c2b4a',
          dotSize: 0,
          minWidth: 0.8,
          maxWidth: 2.4,
          velocityFilterWeight: 0.7,
          compositeOperation: 'source-over' as const,
          points: points.map((point) => ({ ...point, time: 0, pressure: 0.5 })),
        })),
      );
  }, [shown, strokes]);

  return (
    <div className={classes.box}>
      {shown === 0 && typedName !== '' && (
        <span className={classes.typed} aria-hidden>
          {typedName}
        </span>
      )}
      <canvas ref={canvas} className={classes.canvas} aria-hidden />
    </div>
  );
}
