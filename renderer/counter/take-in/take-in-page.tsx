import { Button } from '@mantine/core';
import { IconArrowBackUp, IconEraser } from '@tabler/icons-react';
import { useState } from 'react';
import { Page } from '../../common/page.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { emptyDraft } from './draft.ts';
import { TakeInForm } from './take-in-form.tsx';
import { type Taken, TakenPanel } from './taken-panel.tsx';
import { usePrefill } from './use-prefill.ts';

/** The whole intake on one page, for a keyboard and a customer who is waiting. */
export function TakeInPage() {
  const [draft, setDraft, clear] = useDraft('take-in', emptyDraft);
  const [taken, setTaken] = useState<Taken | null>(null);
  const [fresh, setFresh] = useState(0);
  /** What was cleared away: one slip of the finger loses nothing. */
  const [cleared, setCleared] = useState<typeof draft | null>(null);
  usePrefill(setDraft);

  if (taken !== null) return <TakenPanel taken={taken} onNext={() => setTaken(null)} />;
  return (
    <Page
      title="Take in a machine"
      description="Enter or Tab goes on; in the signature, Enter writes the name, Tab and Enter record it. What is typed is kept."
      actions={
        draft !== emptyDraft ? (
          <Button
            variant="subtle"
            leftSection={<IconEraser size={18} aria-hidden />}
            onClick={() => {
              setCleared(draft);
              clear();
              setFresh(fresh + 1);
            }}
          >
            Clear all
          </Button>
        ) : (
          cleared !== null && (
            <Button
              variant="subtle"
              leftSection={<IconArrowBackUp size={18} aria-hidden />}
              onClick={() => {
                setDraft(cleared);
                setCleared(null);
                setFresh(fresh + 1);
              }}
            >
              Bring back what was cleared
            </Button>
          )
        )
      }
    >
      <TakeInForm
        key={fresh}
        draft={draft}
        setDraft={setDraft}
        onTaken={(result) => {
          clear();
          setCleared(null);
          setTaken(result);
        }}
      />
    </Page>
  );
}
