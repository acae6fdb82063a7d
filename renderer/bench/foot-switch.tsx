import { Switch } from '@mantine/core';
import { useFootSwitch } from './bench-habits.ts';

/**
 * Whether a foot switch is plugged in at this station. It types a space, which then records as Enter does;
 * units are typed without a space meanwhile (`17lbf·ft`).
 */
export function FootSwitch() {
  const [on, setOn] = useFootSwitch();
  return (
    <Switch
      checked={on}
      onChange={(event) => setOn(event.currentTarget.checked)}
      label="Foot switch: space records"
      description={on ? 'Type a unit without a space: 17lbf·ft' : undefined}
      size="md"
    />
  );
}
