import { Button, Fieldset, Group, Input, Text, TextInput } from '@mantine/core';
import { IconEraser, IconPencilCheck, IconUser } from '@tabler/icons-react';
import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import SignaturePad from 'signature_pad';
import { typedNameWords } from '../../shared/work/typed-name.ts';
import classes from './signature-field.module.css';
import { useStation } from './station.tsx';

/** Strokes on a box of width × height, or a name that was typed and recorded in their place. */
export interface SignatureValue {
  name: string;
  strokes: { x: number; y: number }[][];
  width: number;
  height: number;
  /** Who recorded the typed name (the id of a person on the staff list); null when it was drawn. */
  typedBy: string | null;
}

/** What the contract takes: the desk itself says who typed the name, whoever makes the call. */
export const signatureInput = ({ typedBy: _, ...signature }: SignatureValue) => signature;

interface SignatureFieldProps {
  label: string;
  /** Null until somebody has signed. */
  value: SignatureValue | null;
  onChange: (value: SignatureValue | null) => void;
  /** Who is expected to sign; Enter in the empty field writes that name, and signs nothing. */
  suggestedName: string;
  error?: string;
}

const WIDTH = 400;
const HEIGHT = 120;

/** A hundredth of a unit is finer than any pen; more digits only make the paper heavier. */
const rounded = (value: number) => Math.round(value * 100) / 100;

/**
 * A signature by pen or finger, which is one act, or by a typed name, which is two: the name, and then the
 * button that records it. The value is null until one of them is done; a drawing takes the suggested name.
 * What one person recorded lapses when another comes to the station, who did not type it.
 */
export function SignatureField(props: SignatureFieldProps) {
  const { label, value, onChange, suggestedName, error } = props;
  const { staff } = useStation();
  const [typed, setTyped] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const recorded = useRef<HTMLParagraphElement>(null);
  const statement = useId();
  const name = value?.name ?? typed;
  const strokes = value?.strokes ?? [];
  const isDrawn = strokes.length > 0;
  const typedBy = value?.typedBy ?? null;
  const typedByAnother = typedBy !== null && typedBy !== staff?.id;

  useEffect(() => {
    if (typedByAnother) onChange(null);
  }, [typedByAnother, onChange]);

  const write = (text: string) => {
    if (value !== null && isDrawn) return onChange({ ...value, name: text });
    // A name that is changed is another one than was recorded.
    if (value !== null) onChange(null);
    setTyped(text);
  };
  const record = () => {
    if (staff === null) return;
    const signed = { name: typed.trim(), strokes: [], width: WIDTH, height: HEIGHT };
    onChange({ ...signed, typedBy: staff.id });
    setTyped('');
    // The button is gone once it is pressed.
    setTimeout(() => recorded.current?.focus());
  };
  const enter = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter' || event.ctrlKey || event.metaKey) return;
    if (event.nativeEvent.isComposing) return;
    // Neither the form nor the next field: how often it is pressed, here it signs and sends nothing.
    event.preventDefault();
    if (name === '' && suggestedName !== '') write(suggestedName);
  };

  return (
    <Fieldset variant="unstyled" legend={label} className={classes.field}>
      <Group gap="xs" align="flex-end" mb={4}>
        <TextInput
          ref={field}
          label="Name of who signs"
          size="sm"
          className={classes.name}
          value={name}
          error={isDrawn && name.trim() === '' ? 'Add the name of who signed.' : undefined}
          onChange={(event) => write(event.currentTarget.value)}
          onKeyDown={enter}
          autoComplete="off"
        />
        {value === null && typed.trim() !== '' && (
          <Button
            leftSection={<IconPencilCheck size={18} aria-hidden />}
            variant="light"
            px="sm"
            aria-describedby={statement}
            onClick={record}
          >
            Record typed signature
          </Button>
        )}
        {suggestedName !== '' && name === '' && (
          <Button
            variant="default"
            leftSection={<IconUser size={18} aria-hidden />}
            onClick={() => {
              write(suggestedName);
              field.current?.focus();
            }}
          >
            {/* One piece: a button parts its children and drops the space between them. */}
            <span>
              Type <bdi>{suggestedName}</bdi>
            </span>
          </Button>
        )}
        {(value !== null || typed !== '') && (
          <Button
            variant="subtle"
            px="xs"
            leftSection={<IconEraser size={18} aria-hidden />}
            onClick={() => {
              onChange(null);
              setTyped('');
              field.current?.focus();
            }}
          >
            Clear
          </Button>
        )}
      </Group>
      <Text
        ref={recorded}
        id={statement}
        role="status"
        tabIndex={-1}
        size="xs"
        mb={6}
        {...(name === '' && { c: 'dimmed' })}
      >
        {says()}
      </Text>
      <Pad
        strokes={strokes}
        recordedName={isDrawn ? '' : (value?.name ?? '')}
        onStrokes={(drawn) =>
          onChange({
            name: name === '' ? suggestedName : name,
            strokes: drawn,
            width: WIDTH,
            height: HEIGHT,
            typedBy: null,
          })
        }
      />
      {error !== undefined && <Input.Error mt={4}>{error}</Input.Error>}
    </Fieldset>
  );

  function says(): string {
    const station = staff?.name ?? '';
    if (isDrawn) return 'Signed by hand.';
    if (value !== null) return `Signed: ${typedNameWords(station)}.`;
    if (typed.trim() !== '')
      return `Typed by ${station} for ${typed.trim()}. Not signed yet: record it, or sign in the box.`;
    return 'Sign in the box with pen or finger, or type the name and record it as a typed signature.';
  }
}

interface PadProps {
  strokes: SignatureValue['strokes'];
  /** A typed name that counts as the signature; empty when none does. */
  recordedName: string;
  onStrokes: (strokes: SignatureValue['strokes']) => void;
}

function Pad({ strokes, recordedName, onStrokes }: PadProps) {
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
      {shown === 0 && recordedName !== '' && (
        <span className={classes.typed} aria-hidden>
          {recordedName}
        </span>
      )}
      <canvas ref={canvas} className={classes.canvas} aria-hidden />
    </div>
  );
}
