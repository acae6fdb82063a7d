import { Paper, Stack, Text, Title } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import type {
  BenchSheet,
  FeatureOnSheet,
  Gauge,
  Reading,
} from '../../shared/contract/bench/index.ts';
import type { EngineModelId, JobCode } from '../../shared/contract/ids.ts';
import { type LashPosition, wantsPosition } from '../../shared/work/bench/lash-position.ts';
import type { Feature, MeasuredFeature } from '../../shared/work/features.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import { AllMeasured } from './all-measured.tsx';
import { useFeatureHabit } from './bench-habits.ts';
import { DecidedSize } from './decided-size.tsx';
import { DerivedList } from './derived-list.tsx';
import { FeatureSpecification } from './feature-specification.tsx';
import { GaugeChoice } from './gauge-choice.tsx';
import { AskLashPosition, LashPositionLine } from './lash-position-choice.tsx';
import { featurePicture, spotOf } from './pictures/feature-picture.tsx';
import { PlaceList } from './place-list.tsx';
import { ReadingEntry } from './reading-entry.tsx';
import { heldInPhase, nextPlace, standingReading, targetOf } from './sheet-reading.ts';

/** What follows from a feature's readings, shown below them. */
const FOLLOWS: Partial<Record<MeasuredFeature, readonly Feature[]>> = {
  bore: ['bore-taper', 'bore-out-of-round', 'bore-wear', 'piston-clearance', 'displacement'],
  'piston-skirt': ['piston-clearance'],
  crankpin: ['crankpin-out-of-round', 'rod-clearance'],
  'rod-big-end': ['rod-clearance'],
  'main-journal': ['main-journal-out-of-round'],
  'chamber-volume': ['compression-ratio'],
  'gasket-thickness': ['compression-ratio'],
  'deck-clearance': ['compression-ratio'],
  'valve-stem-intake': ['stem-clearance-intake'],
  'valve-guide-intake': ['stem-clearance-intake'],
  'valve-stem-exhaust': ['stem-clearance-exhaust'],
  'valve-guide-exhaust': ['stem-clearance-exhaust'],
  'valve-travel-intake': ['valve-lift-intake'],
  'valve-travel-exhaust': ['valve-lift-exhaust'],
};

interface FeaturePanelProps {
  readonly sheet: BenchSheet;
  readonly feature: FeatureOnSheet;
  readonly engineModelId: EngineModelId;
  readonly jobCode: JobCode;
  readonly phase: Phase;
  readonly gauges: Gauge[];
  /** The feature after this one; null at the end of the list. */
  readonly next: MeasuredFeature | null;
  readonly onNext: () => void;
}

/** One feature being measured: how, against what, where now, and what has been read so far. */
export function FeaturePanel(props: FeaturePanelProps) {
  const { sheet, feature, phase } = props;
  const habit = useFeatureHabit(feature.feature, feature.unit, props.gauges);
  const [temperature, setTemperature] = useState<number | null>(null);
  // Each cylinder is turned to its own dead centre.
  const [positions, setPositions] = useState<ReadonlyMap<number, LashPosition>>(new Map());
  const [at, setAt] = useState<string | null>(() => nextPlace(feature.places, phase)?.key ?? null);
  const [correcting, setCorrecting] = useState<Reading | null>(null);
  const place = feature.places.find(({ key }) => key === at) ?? null;
  const cylinder = place?.cylinder ?? 1;
  const asksPosition = wantsPosition(feature.feature);
  const position = asksPosition ? (positions.get(cylinder) ?? null) : null;
  const turn = (to: LashPosition | null) =>
    setPositions((before) => {
      const after = new Map(before);
      if (to === null) after.delete(cylinder);
      else after.set(cylinder, to);
      return after;
    });
  const picture = featurePicture(feature, {
    now: place === null ? null : spotOf(place.key),
    done: new Set(
      feature.places
        .filter((each) => each.cylinder === cylinder && standingReading(each, phase) !== undefined)
        .map(({ key }) => spotOf(key)),
    ),
  });
  const follows = sheet.derived.filter(
    (figure) => figure.phase === phase && FOLLOWS[feature.feature]?.includes(figure.feature),
  );

  return (
    <Stack gap="md">
      <div>
        <Title order={2}>{feature.label}</Title>
        <Text>{feature.hint}</Text>
      </div>
      <FeatureSpecification
        feature={feature}
        engineModelId={props.engineModelId}
        jobCode={props.jobCode}
      />
      <DecidedSize feature={feature} phase={phase} cylinders={sheet.cylinders} />
      {!sheet.closed && (
        <Paper withBorder p="md">
          {place === null ? (
            <AllMeasured
              jobCode={props.jobCode}
              phase={phase}
              next={props.next}
              onNext={props.onNext}
            />
          ) : asksPosition && position === null ? (
            <AskLashPosition
              key={cylinder}
              cylinder={sheet.cylinders > 1 ? cylinder : null}
              onChoose={turn}
            />
          ) : (
            <ReadingEntry
              jobId={sheet.jobId}
              feature={feature}
              place={heldInPhase(feature.feature, place, phase)}
              phase={phase}
              gauge={habit.gauge}
              unit={habit.unit}
              onUnit={habit.chooseUnit}
              temperature={temperature}
              position={position}
              correcting={correcting}
              onRecorded={() => {
                setCorrecting(null);
                setAt(nextPlace(feature.places, phase, place.key)?.key ?? null);
              }}
              onCancelCorrection={() => setCorrecting(null)}
              picture={picture === null ? null : <WithOrder feature={feature}>{picture}</WithOrder>}
            >
              {position !== null && (
                <LashPositionLine position={position} onChange={() => turn(null)} />
              )}
              <GaugeChoice
                gauges={habit.suited}
                gauge={habit.gauge}
                expected={targetOf(heldInPhase(feature.feature, place, phase))}
                onGauge={habit.chooseGauge}
                temperature={temperature}
                onTemperature={setTemperature}
              />
            </ReadingEntry>
          )}
        </Paper>
      )}
      <PlaceList
        feature={feature}
        phase={phase}
        unit={habit.unit}
        gauges={props.gauges}
        now={sheet.closed ? null : at}
        closed={sheet.closed}
        onChoose={(chosen) => {
          setCorrecting(null);
          setAt(chosen.key);
        }}
        onCorrect={(chosen, reading) => {
          setCorrecting(reading);
          setAt(chosen.key);
        }}
      />
      {follows.length > 0 && (
        <section aria-label="What follows from these readings">
          <Title order={3} size="h4" mb="xs">
            What follows from these readings
          </Title>
          <DerivedList derived={follows} cylinders={sheet.cylinders} />
        </section>
      )}
    </Stack>
  );
}

/** The picture, and for bolts what their numbers mean. */
function WithOrder({
  feature,
  children,
}: {
  readonly feature: FeatureOnSheet;
  readonly children: ReactNode;
}) {
  const fastener = feature.specification?.fastener ?? null;
  return (
    <div>
      {children}
      {fastener !== null && (
        <Text size="sm" mt="xs">
          {fastener.count} bolts M{fastener.diameter} × {fastener.pitch}, class{' '}
          {fastener.propertyClass}. The number on a bolt is its turn; every stage goes round once in
          this order.
        </Text>
      )}
    </div>
  );
}
