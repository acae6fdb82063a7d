import { Button } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconPencil } from '@tabler/icons-react';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { signedWords } from '../../../shared/work/typed-name.ts';
import { SYMPTOM_LABELS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { useMoney } from '../../common/shop.tsx';
import { AmendIntake } from '../amend/amend-intake.tsx';
import { Facts } from './facts.tsx';

/** What was said and seen at the counter, and what was agreed there. */
export function IntakeCard({ job }: { job: JobDossier }) {
  const format = useFormat();
  const [mending, dialog] = useDisclosure(false);
  return (
    <Card
      title="What came in"
      aside={
        job.state !== 'handed-over' && (
          <Button
            variant="default"
            size="compact-sm"
            h={32}
            leftSection={<IconPencil size={16} aria-hidden />}
            onClick={dialog.open}
          >
            Mend
          </Button>
        )
      }
    >
      <Facts
        facts={[
          { name: 'Complaint', value: job.complaint },
          {
            name: 'Symptoms',
            value: job.symptoms.map((symptom) => SYMPTOM_LABELS[symptom]).join(' · '),
          },
          { name: 'Condition', value: job.condition },
          { name: 'Left with it', value: job.leftWith.join(' · ') },
          { name: 'Fuel', value: job.fuel },
          { name: 'Last service', value: job.lastService },
          { name: 'Taken in', value: `${format.date(job.takenInOn)} by ${job.takenInBy}` },
          { name: 'Signed', value: signedWords(job.intakeSigned) },
          ...job.amendments.map(({ at, by, reason }) => ({
            name: 'Mended',
            value: `${format.instant(at)} by ${by}: ${reason}`,
          })),
        ]}
      />
      {mending && <AmendIntake job={job} onClose={dialog.close} />}
    </Card>
  );
}

export function AgreedCard({ job }: { job: JobDossier }) {
  const money = useMoney();
  const amount = (minor: number | null) => (minor === null ? 'none agreed' : money(minor));
  return (
    <Card title="What was agreed">
      <Facts
        facts={[
          { name: 'Diagnosis fee', value: amount(job.diagnosisFee) },
          {
            name: 'Spending limit',
            value:
              job.spendingLimit === null ? 'none: call before any work' : money(job.spendingLimit),
          },
          { name: 'Deposit', value: amount(job.depositAgreed) },
        ]}
      />
    </Card>
  );
}
