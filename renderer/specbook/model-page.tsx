import { Anchor, Button, Stack, Text, Title } from '@mantine/core';
import { IconChecklist, IconPlus } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useNavigate, useParams } from 'react-router';
import { EngineModelId } from '../../shared/contract/ids.ts';
import type { EngineModel, NamedModel, Specification } from '../../shared/contract/specbook.ts';
import { display } from '../../shared/trade/index.ts';
import { CORE_FEATURES, FEATURES, type Feature } from '../../shared/work/features.ts';
import { CYCLE_LABELS } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import { Sheet } from '../common/sheet.tsx';
import { modelAddress, useErrand } from './book-errand.ts';
import { ConfirmForm } from './confirm-form.tsx';
import { ContradictForm } from './contradict-form.tsx';
import { ErrandBanner } from './errand-banner.tsx';
import { ExportButtons } from './export-buttons.tsx';
import { LackingFeatures } from './lacking-features.tsx';
import { ModelForm } from './model-form.tsx';
import { Relatives } from './relatives.tsx';
import { Sources } from './source-files.tsx';
import classes from './specbook.module.css';
import { SpecificationEntry } from './specification-entry.tsx';
import { SpecificationForm } from './specification-form.tsx';

/** One engine model: its dimensions, and every specification with where it came from. */
export function ModelPage() {
  const { id } = useParams();
  const known = EngineModelId.safeParse(id);
  if (!known.success)
    return (
      <Page title="Spec book">
        <Empty
          title="There is no such entry"
          hint="The address is not one of the spec book’s."
          action={
            <Anchor component={Link} to="/spec-book">
              Open the spec book
            </Anchor>
          }
        />
      </Page>
    );
  return <Known key={known.data} id={known.data} />;
}

function Known({ id }: { readonly id: EngineModelId }) {
  const query = useQuery(deskQuery.specbook.model.queryOptions({ input: { id } }));
  return <QueryView query={query}>{(entry) => <Entry {...entry} />}</QueryView>;
}

/** What every rebuild needs comes first, as on the bench. */
const byUrgency: readonly Feature[] = [...new Set<Feature>([...CORE_FEATURES, ...FEATURES])];

/** What the form is open for. */
interface Addition {
  feature: Feature;
  /** The specification that a new one would follow. */
  current: Specification | null;
}

function Entry({
  model,
  specifications,
  variants,
}: {
  readonly model: EngineModel;
  readonly specifications: readonly Specification[];
  readonly variants: readonly NamedModel[];
}) {
  const navigate = useNavigate();
  const errand = useErrand();
  const [confirming, setConfirming] = useState<Specification | null>(null);
  const [contradicting, setContradicting] = useState<Specification | null>(null);
  const [addingVariant, setAddingVariant] = useState(false);
  const current = (feature: Feature) =>
    specifications.find((each) => each.feature === feature) ?? null;
  // What is being revised is held as it was when somebody began: a new revision must not change the
  // form under their hands.
  const [adding, setAdding] = useState<Addition | null>(() => {
    const feature = errand.feature ?? 'bore';
    return errand.add ? { feature, current: current(feature) } : null;
  });
  const add = (feature: Feature) => setAdding({ feature, current: current(feature) });
  const lacking = byUrgency.filter((feature) => current(feature) === null);
  const after = (feature: Feature | undefined): Feature | null =>
    feature === undefined
      ? null
      : (byUrgency.slice(byUrgency.indexOf(feature) + 1).find((each) => lacking.includes(each)) ??
        null);
  const last = specifications
    .filter(({ inheritedFrom }) => inheritedFrom === null)
    .reduce<Specification | null>(
      (latest, each) => (latest === null || each.enteredAt > latest.enteredAt ? each : latest),
      null,
    );
  return (
    <Page
      title={`${model.make} ${model.model}`}
      description={
        <Anchor component={Link} to="/spec-book" size="sm">
          Spec book
        </Anchor>
      }
      actions={
        <>
          <Button
            component={Link}
            to={`/spec-book/${model.id}/build-sheet`}
            variant="default"
            leftSection={<IconChecklist size={18} aria-hidden />}
          >
            Build sheet
          </Button>
          <Button
            leftSection={<IconPlus size={18} aria-hidden />}
            onClick={() => add(lacking[0] ?? 'bore')}
          >
            Add a specification
          </Button>
        </>
      }
    >
      <Stack gap="lg">
        {errand.job !== null && <ErrandBanner job={errand.job} model={model} />}
        <ModelFacts model={model} />
        <Relatives
          model={model}
          variants={variants}
          job={errand.job}
          onAdd={() => setAddingVariant(true)}
        />
        <section aria-label="Specifications">
          <Title order={2} size="h3" mb="xs">
            Specifications
          </Title>
          {specifications.length === 0 ? (
            <Empty
              title="No specifications yet"
              hint="Write down one at a time, as its source prints it, with the page. Two people or two sources confirm it."
            />
          ) : (
            <Sheet>
              {specifications.map((specification) => (
                <SpecificationEntry
                  key={specification.id}
                  specification={specification}
                  wanted={errand.feature === specification.feature}
                  onRevise={() => add(specification.feature)}
                  onConfirm={() => setConfirming(specification)}
                  onContradict={() => setContradicting(specification)}
                />
              ))}
            </Sheet>
          )}
        </section>
        <Sources specifications={specifications} />
        <LackingFeatures features={lacking} all={specifications.length === 0} onAdd={add} />
        <ExportButtons id={model.id} />
      </Stack>
      <SpecificationForm
        model={model}
        feature={adding?.feature ?? null}
        current={adding?.current ?? null}
        next={after(adding?.feature)}
        usualSource={last?.source.id ?? ''}
        onFeature={add}
        onClose={() => setAdding(null)}
      />
      <ConfirmForm specification={confirming} onClose={() => setConfirming(null)} />
      <ContradictForm specification={contradicting} onClose={() => setContradicting(null)} />
      <ModelForm
        opened={addingVariant}
        make={model.make}
        model={`${model.model} `}
        family={model}
        onClose={() => setAddingVariant(false)}
        onAdded={(id) => navigate(modelAddress(id, errand.job))}
      />
    </Page>
  );
}

function ModelFacts({ model }: { readonly model: EngineModel }) {
  const facts = [
    ['Cycle', CYCLE_LABELS[model.cycle]],
    ['Cylinders', String(model.cylinders)],
    ['Nominal bore', model.bore === null ? '–' : display(model.bore, 'mm')],
    ['Stroke', model.stroke === null ? '–' : display(model.stroke, 'mm')],
    ['Swept volume', model.displacement === null ? '–' : display(model.displacement, 'cm3')],
    ['Unconfirmed', `${model.unconfirmed} of ${model.specifications}`],
    ...(model.contradicted > 0 ? [['Sources disagree', `on ${model.contradicted}`]] : []),
  ];
  return (
    <div>
      <dl className={classes.facts}>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {model.note !== '' && (
        <Text mt="sm" dir="auto">
          {model.note}
        </Text>
      )}
    </div>
  );
}
