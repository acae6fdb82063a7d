import { Text } from '@mantine/core';
import { IconCheck, IconX } from '@tabler/icons-react';
import { wiresThatDiffer } from '../../../shared/work/bench/build-steps.ts';
import classes from './build.module.css';

interface Wire {
  readonly from: string;
  readonly to: string;
}

/** Each wire of the diagram: one says which colour it is really joined to, and sees whether that is right. */
export function WireCheck({
  wires,
  found,
  onFound,
}: {
  readonly wires: readonly Wire[];
  readonly found: Readonly<Record<string, string>>;
  readonly onFound: (from: string, to: string) => void;
}) {
  if (wires.length === 0)
    return (
      <Text>
        The build sheet has no diagram for this: look it up in the maker’s, wire by wire, before you
        pass the step.
      </Text>
    );
  const colours = [...new Set(wires.map(({ to }) => to))].toSorted();
  return (
    <div>
      <Text mb="xs">
        For each wire: look at its other end, and tap the colour that you see there.
      </Text>
      {wires.map((wire) => {
        const seen = found[wire.from] ?? '';
        const right = wiresThatDiffer([wire], [{ from: wire.from, to: seen }]).length === 0;
        return (
          <fieldset key={wire.from} className={classes.wire}>
            <legend>{wire.from} is joined to</legend>
            <div className={classes.colours}>
              {colours.map((colour) => (
                <label key={colour} className={classes.colour}>
                  <input
                    type="radio"
                    name={`wire ${wire.from}`}
                    value={colour}
                    checked={seen === colour}
                    onChange={() => onFound(wire.from, colour)}
                  />
                  {colour}
                </label>
              ))}
            </div>
            <div
              className={classes.wireWords}
              data-right={seen === '' ? undefined : right}
              role="status"
            >
              {seen !== '' &&
                (right ? (
                  <>
                    <IconCheck size={20} aria-hidden /> as in the diagram
                  </>
                ) : (
                  <>
                    <IconX size={20} aria-hidden /> the diagram says {wire.to}: put it right, then
                    look again
                  </>
                ))}
            </div>
          </fieldset>
        );
      })}
    </div>
  );
}
