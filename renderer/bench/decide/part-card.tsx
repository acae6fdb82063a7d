import { Stack, Text, Title } from '@mantine/core';
import { useId, useState } from 'react';
import type { JobDecisions, PartToDecide } from '../../../shared/contract/bench/index.ts';
import { Choose } from './choose.tsx';
import classes from './decide.module.css';
import { Decided, EarlierDecisions } from './decided.tsx';
import { stepWords } from './decision-words.ts';
import { FigureList } from './figure-list.tsx';

/** One part: its figures, the advice, what was decided and by whom. */
export function PartCard(props: {
  readonly job: JobDecisions;
  readonly part: PartToDecide;
  readonly onDecided: (part: PartToDecide) => void;
}) {
  const { job, part, onDecided } = props;
  const id = useId();
  const [anew, setAnew] = useState(false);
  const choosing = !job.closed && (anew || part.standing === null);
  return (
    <section aria-labelledby={id} className={classes.card}>
      <Stack gap="sm">
        <Title
          order={3}
          id={id}
          tabIndex={-1}
          className={classes.title}
          data-part={`${part.subject} ${part.cylinder}`}
        >
          {part.label}
        </Title>
        <div className={part.figures.length > 0 ? classes.parted : undefined}>
          <FigureList part={part} />
          <Stack gap="sm">
            <Advised part={part} />
            {part.standing !== null && (
              <Decided
                part={part}
                decision={part.standing}
                onDecideAnew={job.closed || anew ? null : () => setAnew(true)}
              />
            )}
            {choosing && (
              <Choose
                job={job}
                part={part}
                onDone={() => {
                  setAnew(false);
                  onDecided(part);
                }}
                onLeave={anew ? () => setAnew(false) : null}
              />
            )}
            {job.closed && part.standing === null && <Text c="dimmed">Nothing was decided.</Text>}
            <EarlierDecisions part={part} />
          </Stack>
        </div>
      </Stack>
    </section>
  );
}

const WITHOUT_CHOICE = {
  figures: 'Advice',
  doubt: 'In doubt: no advice',
  none: 'No advice',
} as const;

function Advised({ part }: { readonly part: PartToDecide }) {
  const { choice, step, reason, grounds } = part.advice;
  const label = part.choices.find((each) => each.choice === choice)?.label;
  return (
    <div className={classes.advice} data-grounds={grounds}>
      <Text fw={650}>
        {choice === null || label === undefined
          ? WITHOUT_CHOICE[grounds]
          : `Advice: ${label.toLowerCase()}${step === null ? '' : ` ${stepWords(choice, step)}`}`}
      </Text>
      <Text size="sm">{reason}</Text>
    </div>
  );
}
