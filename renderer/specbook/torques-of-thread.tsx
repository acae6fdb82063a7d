import { Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { EngineModelId } from '../../shared/contract/ids.ts';
import { display, type Unit } from '../../shared/trade/index.ts';
import type { TypedFastener } from '../../shared/work/bench/torque-check.ts';
import { FEATURE_LABELS, type Feature } from '../../shared/work/features.ts';
import { classWords, threadWords } from '../../shared/work/specbook/fastener-words.ts';
import { StandingBadge } from '../common/badges.tsx';
import { deskQuery } from '../common/desk.ts';
import { printedLimits } from '../common/measure/measure-words.ts';
import classes from './specbook.module.css';
import { targetTorque } from './target-torque.ts';

const usable = ({ diameter, pitch }: TypedFastener): boolean =>
  diameter > 0 && diameter <= 30 && pitch > 0 && pitch <= 5;

/** What the book has for the same thread elsewhere, to hold a torque against while it is typed. */
export function TorquesOfThread({
  fastener,
  unit,
  except,
}: {
  readonly fastener: TypedFastener;
  readonly unit: Unit;
  /** The one that is being typed. */
  readonly except: { engineModelId: EngineModelId; feature: Feature };
}) {
  const { diameter, pitch } = fastener;
  const query = useQuery(
    deskQuery.specbook.torquesOfThread.queryOptions({
      input: { diameter, pitch },
      enabled: usable(fastener),
    }),
  );
  const others = (query.data ?? []).filter(
    ({ specification }) =>
      specification.engineModelId !== except.engineModelId ||
      specification.feature !== except.feature,
  );
  if (!usable(fastener) || query.data === undefined) return null;
  const thread = threadWords(fastener);
  if (others.length === 0)
    return (
      <Text size="sm" c="dimmed">
        The book has no other torque for a thread of {thread}.
      </Text>
    );
  return (
    <section aria-label="Other torques of this thread">
      <Text size="sm" fw={600}>
        The same thread ({thread}) elsewhere in the book
      </Text>
      <ul className={classes.torques}>
        {others.map(({ engineModel, specification }) => {
          const target = targetTorque({
            low: specification.lowBase ?? undefined,
            high: specification.highBase ?? undefined,
            aim: specification.aimBase ?? undefined,
          });
          return (
            <li key={specification.id}>
              <span>
                {engineModel.make} {engineModel.model}, {FEATURE_LABELS[specification.feature]}
              </span>
              <span className={classes.figures}>
                {printedLimits(specification)}
                {target !== null &&
                  specification.unit !== unit &&
                  ` (aims at ${display(target, unit)})`}
              </span>
              <span>
                {specification.fastener !== null &&
                  `${threadWords(specification.fastener)}, ${classWords(specification.fastener.propertyClass)}`}
              </span>
              <StandingBadge standing={specification.standing} />
            </li>
          );
        })}
      </ul>
    </section>
  );
}
