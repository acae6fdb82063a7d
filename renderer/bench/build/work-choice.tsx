import { Button, Chip, Group, Modal, Stack, Text, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { Build } from '../../../shared/contract/bench/index.ts';
import {
  WORK_AREA_LABELS,
  WORK_AREAS,
  WORK_KIND_HINTS,
  WORK_KIND_LABELS,
  WORK_KINDS,
  type WorkArea,
  type WorkKind,
  workInWords,
} from '../../../shared/work/bench/work/kinds-of-work.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './work-choice.module.css';

/** What kind of work the job is: asked as long as nobody said, in one line afterwards. */
export function WorkChoice({ build }: { readonly build: Build }) {
  const [opened, setOpened] = useState(false);
  const { work, workReason, seems, closed } = build;
  if (work === null && closed) return null;
  return (
    <section aria-label="Kind of work" className={classes.bar} data-asked={work === null}>
      <div className={classes.words}>
        <Text fw={600}>{work === null ? 'What kind of work is it?' : workInWords(build)}</Text>
        {work === null ? (
          <Text size="sm">
            {seems === null
              ? 'Until somebody says so it has every step of a rebuild.'
              : `By what was measured and decided: ${WORK_KIND_LABELS[seems].toLowerCase()}.`}
          </Text>
        ) : (
          workReason !== '' && <Text size="sm">{workReason}</Text>
        )}
      </div>
      {!closed && (
        <Button
          variant={work === null ? 'filled' : 'default'}
          size="md"
          mih={44}
          onClick={() => setOpened(true)}
        >
          {work === null ? 'Choose' : 'Change…'}
        </Button>
      )}
      <Modal opened={opened} onClose={() => setOpened(false)} title="Kind of work" size="lg">
        {opened && <Choice build={build} onClose={() => setOpened(false)} />}
      </Modal>
    </section>
  );
}

function Choice({ build, onClose }: { readonly build: Build; readonly onClose: () => void }) {
  const by = useBy();
  const [work, setWork] = useState<WorkKind | null>(build.work ?? build.seems);
  const [touched, setTouched] = useState<WorkArea[]>(build.touched);
  const [reason, setReason] = useState('');
  const say = useWrite(deskQuery.bench.sayWork.mutationOptions({ onSuccess: onClose }));
  const begun = build.steps.some(({ state, by: whom }) => state !== 'open' || whom !== '');
  const errors = fieldErrors(say.error);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (work !== null) say.mutate({ by, jobId: build.jobId, work, touched, reason });
      }}
    >
      <Stack gap="md">
        <div role="radiogroup" aria-label="Kind of work" className={classes.kinds}>
          {WORK_KINDS.map((kind) => (
            <label key={kind} className={classes.kind} data-chosen={work === kind}>
              <input
                type="radio"
                name="work"
                value={kind}
                checked={work === kind}
                onChange={() => setWork(kind)}
              />
              <span>
                <Text component="span" fw={600} display="block">
                  {WORK_KIND_LABELS[kind]}
                </Text>
                <Text component="span" size="sm" display="block">
                  {WORK_KIND_HINTS[kind]}
                </Text>
              </span>
            </label>
          ))}
        </div>
        {work === 'repair' && (
          <fieldset className={classes.touched}>
            <legend>What the repair touches</legend>
            <div className={classes.areas}>
              {WORK_AREAS.map((area) => (
                <Chip
                  key={area}
                  size="lg"
                  checked={touched.includes(area)}
                  onChange={(checked) =>
                    setTouched(
                      checked ? [...touched, area] : touched.filter((each) => each !== area),
                    )
                  }
                >
                  {WORK_AREA_LABELS[area]}
                </Chip>
              ))}
            </div>
            {errors.touched !== undefined && (
              <Text role="alert" c="red" size="sm" mt={4}>
                {errors.touched}
              </Text>
            )}
          </fieldset>
        )}
        {begun && (
          <TextInput
            label="Why it is another kind of work now"
            description="Steps were done already; they stay on the list."
            size="md"
            value={reason}
            maxLength={300}
            onChange={(event) => setReason(event.currentTarget.value)}
            error={errors.reason}
          />
        )}
        {say.isError && <RefusalAlert error={say.error} brief />}
        <Group justify="flex-end">
          <Button variant="default" size="md" mih={44} onClick={onClose}>
            Cancel
          </Button>
          <Button
            type="submit"
            size="md"
            mih={44}
            loading={say.isPending}
            disabled={work === null || (work === 'repair' && touched.length === 0)}
          >
            {work === null ? 'Choose one' : `Take the steps of a ${work}`}
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
