import { List, SegmentedControl, Select, Stack, Text } from '@mantine/core';
import { useSearchParams } from 'react-router';
import type { FeatureHistory, PlaceHistory } from '../../../shared/contract/bench/index.ts';
import type { WearAxis } from '../../../shared/work/bench/wear-trend-rules.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { Empty } from '../../common/page.tsx';
import classes from './history.module.css';
import { hoursUnusable, placeTrend } from './place-trend.ts';
import { ReadingsTable } from './readings-table.tsx';
import { NO_PROMISE, trendSentences } from './trend-words.ts';
import { WearPlot } from './wear-plot.tsx';

/** How a place of the engine wore. The address says which, so that it can be sent and come back to. */
export function WearCard({ features }: { readonly features: readonly FeatureHistory[] }) {
  const [parameters, setParameters] = useSearchParams();
  const chosen = choiceOf(features, parameters.get('feature'), parameters.get('place'));
  if (chosen === null)
    return (
      <Card title="How it wore">
        <Empty
          title="Nothing was measured yet"
          hint="Readings of all jobs of this engine come together here as soon as there are any."
        />
      </Card>
    );
  const { feature, place } = chosen;
  return (
    <Card title="How it wore">
      <Stack gap="sm">
        <div className={classes.choices}>
          <Select
            label="Feature"
            data={features.map(({ feature: value, label }) => ({ value, label }))}
            value={feature.feature}
            onChange={(value) => setParameters({ feature: value ?? '' }, { replace: true })}
            classNames={{ input: classes.choice, option: classes.option }}
          />
          {feature.places.length > 1 && (
            <Select
              label="Place"
              data={feature.places.map(({ key, label }) => ({ value: key, label }))}
              value={place.key}
              onChange={(value) =>
                setParameters({ feature: feature.feature, place: value ?? '' }, { replace: true })
              }
              classNames={{ input: classes.choice, option: classes.option }}
            />
          )}
        </div>
        <PlaceWear feature={feature} place={place} />
      </Stack>
    </Card>
  );
}

function PlaceWear({
  feature,
  place,
}: {
  readonly feature: FeatureHistory;
  readonly place: PlaceHistory;
}) {
  const format = useFormat();
  const [parameters, setParameters] = useSearchParams();
  const noHours = hoursUnusable(place.points);
  const axis: WearAxis = noHours === null && parameters.get('over') !== 'dates' ? 'hours' : 'dates';
  const shown = placeTrend(place, axis);
  const sentences = trendSentences(shown, feature.unit, format.date);
  const title = [feature.label, place.label].filter(Boolean).join(': ');
  return (
    <>
      <SegmentedControl
        aria-label="Drawn over"
        value={axis}
        onChange={(over) =>
          setParameters(
            (before) => {
              before.set('over', over);
              return before;
            },
            { replace: true },
          )
        }
        data={[
          { value: 'hours', label: 'Running hours', disabled: noHours !== null },
          { value: 'dates', label: 'Dates' },
        ]}
        size="md"
        w="fit-content"
        classNames={{ label: classes.segment }}
      />
      {noHours !== null && (
        <Text size="sm" c="dimmed">
          Drawn over dates. {noHours}
        </Text>
      )}
      <WearPlot
        title={title}
        place={place}
        shown={shown}
        unit={feature.unit}
        description={`${sentences.join(' ')} The table below has every reading.`}
      />
      {shown.without > 0 && (
        <Text size="sm">Left out of the plot, without running hours: {shown.without}.</Text>
      )}
      <List spacing={4} data-testid="trend">
        {sentences.map((sentence) => (
          <List.Item key={sentence}>{sentence}</List.Item>
        ))}
      </List>
      <Text size="sm">
        The line begins anew where the part was machined, replaced or set. {NO_PROMISE}
      </Text>
      <ReadingsTable
        caption={`Every reading of: ${title}`}
        points={place.points}
        unit={feature.unit}
      />
    </>
  );
}

/** What the address asks for, else what was measured most, and of that what has a wear limit. */
function choiceOf(
  features: readonly FeatureHistory[],
  askedFeature: string | null,
  askedPlace: string | null,
): { feature: FeatureHistory; place: PlaceHistory } | null {
  const most = <T,>(list: readonly T[], weight: (each: T) => number): T | undefined =>
    list.toSorted((a, b) => weight(b) - weight(a))[0];
  const weightOf = ({ points, wearLimit }: PlaceHistory) =>
    points.length + (wearLimit === null ? 0 : 0.5);
  const feature =
    features.find((each) => each.feature === askedFeature) ??
    most(features, ({ places }) => Math.max(...places.map(weightOf)));
  const place =
    feature?.places.find(({ key }) => key === askedPlace) ?? most(feature?.places ?? [], weightOf);
  return feature === undefined || place === undefined ? null : { feature, place };
}
