import {
  Button,
  Checkbox,
  Group,
  Modal,
  NativeSelect,
  SimpleGrid,
  Stack,
  Text,
  TextInput,
} from '@mantine/core';
import { isDefinedError } from '@orpc/client';
import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { z } from 'zod';
import {
  type EngineModel,
  SPECIFICATION_UNITS,
  type Specification,
} from '../../shared/contract/specbook.ts';
import { dimensionOf, display, unitLabel } from '../../shared/trade/index.ts';
import { isTorque, needsFastener } from '../../shared/work/bench/torque-check.ts';
import {
  DERIVED_FEATURES,
  FEATURE_LABELS,
  FEATURE_UNITS,
  FEATURES,
  type Feature,
  MEASURED_FEATURES,
  RUN_FEATURES,
} from '../../shared/work/features.ts';
import { readBand } from '../../shared/work/specbook/specification-band.ts';
import { isAllowance } from '../../shared/work/specbook/wear-limit.ts';
import { deskQuery } from '../common/desk.ts';
import { focusPage } from '../common/page-start.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';
import { ConflictNote } from './conflict-note.tsx';
import { FastenerFields } from './fastener-fields.tsx';
import { SourceChoice } from './source-choice.tsx';
import { draftOf, fastenerOf, type SpecificationDraft } from './specification-draft.ts';
import { targetTorque } from './target-torque.ts';
import { TorqueCheck } from './torque-check.tsx';
import { TorquesOfThread } from './torques-of-thread.tsx';
import { useSource } from './use-source.ts';

interface SpecificationFormProps {
  readonly model: EngineModel;
  /** What is being specified; null while the form is closed. */
  readonly feature: Feature | null;
  /** The revision that a new one would follow. */
  readonly current: Specification | null;
  /** What the book lacks after this one; null when there is nothing. */
  readonly next: Feature | null;
  /** The source that the last figure of this entry was read in; empty for none. */
  readonly usualSource: string;
  readonly onFeature: (feature: Feature) => void;
  readonly onClose: () => void;
}

/** Adds a specification, or a new revision of one. */
export function SpecificationForm(props: SpecificationFormProps) {
  const { feature, current } = props;
  return (
    <Modal
      opened={feature !== null}
      onClose={props.onClose}
      // What it was opened from may be gone with what was added: then the focus goes to the page.
      onExitTransitionEnd={focusPage}
      title={titleOf(current, props.model)}
      size="xl"
    >
      {feature !== null && (
        <Fields key={`${feature} ${current?.id ?? ''}`} {...props} feature={feature} />
      )}
    </Modal>
  );
}

function titleOf(current: Specification | null, model: EngineModel): string {
  if (current === null) return 'Add a specification';
  return current.inheritedFrom === null
    ? `Revise: revision ${current.revision + 1}`
    : `State its own for ${model.make} ${model.model}`;
}

const Unit = z.enum(SPECIFICATION_UNITS);
const FeatureChoice = z.enum(FEATURES);

function Fields({
  model,
  feature,
  current,
  next,
  usualSource,
  onFeature,
  onClose,
}: SpecificationFormProps & { readonly feature: Feature }) {
  const by = useBy();
  const [tried, setTried] = useState(false);
  const [draft, setDraft, clear] = useDraft<SpecificationDraft>(
    `specification.${model.id}.${feature}.${current?.id ?? 'first'}`,
    draftOf(feature, current, usualSource),
  );
  const add = useWrite(deskQuery.specbook.addSpecification.mutationOptions());
  const change = (part: Partial<SpecificationDraft>) => {
    add.reset();
    setDraft((before) => ({ ...before, ...part }));
  };
  const source = useSource((sourceId) => setDraft((before) => ({ ...before, sourceId })));

  const band = readBand(feature, draft);
  const fastener = fastenerOf(feature, draft);
  // Seen as it is typed: a limit that can't be one judges every job after.
  const instead = band.ok ? undefined : band.issues.find((issue) => issue.instead)?.instead;
  const own = (tried || instead !== undefined) && !band.ok ? byPath(band.issues) : {};
  const refusal = source.error ?? add.error;
  const errors: Record<string, string> = {
    ...(tried && draft.sourceId === '' ? { sourceId: 'Choose a source, or write one out.' } : {}),
    ...own,
    ...fieldErrors(refusal),
  };
  const questioned =
    isDefinedError(add.error) && add.error.code === 'TORQUE_QUESTIONED' ? add.error.data : null;

  const low = useRef<HTMLInputElement>(null);
  // One specification after the other, without a way back to the page between them.
  useEffect(() => low.current?.focus(), []);

  const send = async (keepQuestioned: boolean, goOn = false) => {
    setTried(true);
    if (!band.ok) return;
    const sourceId = await source.settle(draft);
    if (sourceId === null) return;
    const { high, aim, wearLimit, unit, condition, page } = draft;
    add.mutate(
      {
        by,
        engineModelId: model.id,
        feature,
        low: draft.low,
        high,
        aim,
        wearLimit,
        unit,
        condition,
        page,
        sourceId,
        fastener,
        keepQuestioned,
      },
      {
        onSuccess: () => {
          clear();
          if (goOn && next !== null) onFeature(next);
          else onClose();
        },
      },
    );
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    // Enter never keeps a questioned torque: that takes its own button.
    if (questioned === null) send(false, submitterOf(event) === THEN_NEXT);
  };
  const alsoNext = (event: KeyboardEvent<HTMLFormElement>) => {
    if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    event.currentTarget.requestSubmit(event.currentTarget.querySelector(`#${THEN_NEXT}`));
  };
  const limit = (key: 'low' | 'high' | 'aim' | 'wearLimit', label: string, description: string) => (
    <TextInput
      label={label}
      description={description}
      inputMode="decimal"
      ref={key === 'low' ? low : undefined}
      data-autofocus={key === 'low' ? true : undefined}
      value={draft[key]}
      onChange={(event) => change({ [key]: event.currentTarget.value })}
      error={errors[key]}
    />
  );
  return (
    <form onSubmit={submit} onKeyDown={alsoNext} onInvalidCapture={() => setTried(true)}>
      <Stack>
        {current !== null && <ConflictNote specification={current} />}
        <SimpleGrid cols={2}>
          <NativeSelect
            size="md"
            label="What"
            data={[
              { group: 'Measured', items: options(MEASURED_FEATURES) },
              { group: 'Computed', items: options(DERIVED_FEATURES) },
              { group: 'In the test run', items: options(RUN_FEATURES) },
            ]}
            value={feature}
            onChange={(event) => onFeature(FeatureChoice.parse(event.currentTarget.value))}
          />
          <NativeSelect
            size="md"
            label="Unit, as printed there"
            data={SPECIFICATION_UNITS.filter(
              (each) => dimensionOf(each) === dimensionOf(FEATURE_UNITS[feature]),
            ).map((each) => ({ value: each, label: unitLabel(each) }))}
            value={draft.unit}
            onChange={(event) => change({ unit: Unit.parse(event.currentTarget.value) })}
            error={errors.unit}
          />
        </SimpleGrid>
        <SimpleGrid cols={{ base: 2, sm: 4 }}>
          {limit('low', 'Low', 'or empty')}
          {limit('high', 'High', 'or empty')}
          {limit('aim', 'Aim', 'empty: the middle')}
          {limit('wearLimit', 'Wear limit', 'beyond it: replace')}
        </SimpleGrid>
        {instead !== undefined && (
          <Button variant="default" mih={44} onClick={() => change({ wearLimit: instead })}>
            It is how much it may wear: {instead} {unitLabel(draft.unit)}
          </Button>
        )}
        {band.ok && isAllowance(feature, draft.wearLimit) && band.band.wearLimit !== undefined && (
          <Text size="sm">
            Replaced beyond {display(band.band.wearLimit, draft.unit)}: the limit of a new part and{' '}
            {draft.wearLimit.trim()} of wear.
          </Text>
        )}
        {isTorque(feature) && draft.bolted && (
          <TorqueCheck
            torque={band.ok ? targetTorque(band.band) : null}
            fastener={fastener}
            unit={draft.unit}
          />
        )}
        {fastener !== null && (
          <TorquesOfThread
            fastener={fastener}
            unit={draft.unit}
            except={{ engineModelId: model.id, feature }}
          />
        )}
        <TextInput
          label="Condition"
          description="Cold, dry, oiled, at what temperature …"
          value={draft.condition}
          onChange={(event) => change({ condition: event.currentTarget.value })}
          error={errors.condition}
        />
        {isTorque(feature) && !needsFastener(feature) && (
          <Checkbox
            size="md"
            label="The thread and class of what is tightened are known"
            checked={draft.bolted}
            onChange={(event) => change({ bolted: event.currentTarget.checked })}
          />
        )}
        {isTorque(feature) && draft.bolted && (
          <FastenerFields feature={feature} draft={draft} onChange={change} errors={errors} />
        )}
        <SourceChoice draft={draft} onChange={change} errors={errors} />
        <RefusalAlert error={refusal} />
        {questioned !== null && (
          <Text>
            Share of the proof load: <strong>{questioned.preloadShareOfProof.toFixed(2)}</strong> (
            {questioned.verdict}). Mend the figure, or keep it deliberately.
          </Text>
        )}
        <Group justify="flex-end">
          <Button variant="default" onClick={onClose}>
            Close
          </Button>
          {questioned === null ? (
            <>
              <Button type="submit" loading={source.pending || add.isPending}>
                {current === null || current.inheritedFrom !== null
                  ? 'Add the specification'
                  : 'Add the revision'}
              </Button>
              {current === null && next !== null && (
                <Button
                  id={THEN_NEXT}
                  type="submit"
                  variant="light"
                  title="Ctrl Enter"
                  loading={source.pending || add.isPending}
                >
                  Add, then {FEATURE_LABELS[next].toLowerCase()}
                </Button>
              )}
            </>
          ) : (
            <Button color="orange" loading={add.isPending} onClick={() => send(true)}>
              The source really says so: keep it
            </Button>
          )}
        </Group>
      </Stack>
    </form>
  );
}

const THEN_NEXT = 'add-then-next';

const submitterOf = ({ nativeEvent }: FormEvent): string =>
  nativeEvent instanceof SubmitEvent ? (nativeEvent.submitter?.id ?? '') : '';

const options = (features: readonly Feature[]) =>
  features.map((each) => ({ value: each, label: FEATURE_LABELS[each] }));

function byPath(issues: readonly { path: string; message: string }[]): Record<string, string> {
  const found: Record<string, string> = {};
  for (const issue of issues) found[issue.path] ??= issue.message;
  return found;
}
