import { List, Text } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import classes from './bench.module.css';

const CAUTIONS = [
  'Fuel drained outdoors, away from flame; used oil, solvents and batteries by local rule.',
  'Run an engine only with its exhaust led outside: carbon monoxide kills unnoticed.',
  'Eye protection at springs (recoil, governor, valve) and rings.',
  'Tines, blades and belts turn with the crankshaft; surfaces stay hot. A leak-down test can turn the crank.',
  'Old gaskets and brake bands may hold asbestos: wet, never sanded or blown.',
  'Generators on house wiring, gas-fuelled engines and pressure vessels: licensed people only.',
];

/** The cautions of the bench: the one that matters most in sight, the others one step away. */
export function Cautions() {
  return (
    <details className={classes.cautions}>
      <summary>
        <IconAlertTriangle size={20} aria-hidden />
        <Text span fw={600}>
          Ignition lead off and earthed before the engine is turned by hand.
        </Text>
        <Text span size="sm" td="underline">
          All cautions
        </Text>
      </summary>
      <List size="sm" mt="xs">
        {CAUTIONS.map((caution) => (
          <List.Item key={caution}>{caution}</List.Item>
        ))}
      </List>
      <Text size="sm" mt="xs">
        The maker’s manual and local law come before anything said here.
      </Text>
    </details>
  );
}
