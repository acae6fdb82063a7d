import { Button, SimpleGrid, Stack } from '@mantine/core';
import { IconAlarm, IconCalendarCheck, IconCalendarPlus, IconPlus } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import { deskQuery } from '../../common/desk.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { useShop, useToday } from '../../common/shop.tsx';
import { BeforeFirst } from './before-first.tsx';
import classes from './day.module.css';
import { daySentence } from './day-sentence.ts';
import { Figures } from './figures.tsx';
import { PartsTooLateCard } from './parts-too-late-card.tsx';
import { PromisedList } from './promised-list.tsx';
import { ToTellCard } from './to-tell-card.tsx';
import type { Day } from './types.ts';
import { UncollectedCard } from './uncollected-card.tsx';
import { WaitingOn } from './waiting-on.tsx';
import { WeekStrip } from './week-strip.tsx';

/** Often enough that a second station's work shows up by itself. */
const REFRESH = 30_000;

/** The start page: what is promised, and whose move it is. */
export function DayPage() {
  const { locale } = useShop();
  const today = useToday();
  const query = useQuery(
    deskQuery.counter.day.queryOptions({ input: {}, refetchInterval: REFRESH }),
  );
  const title = new Intl.DateTimeFormat(locale, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  }).format(new Date(`${query.data?.date ?? today}T12:00:00Z`));
  return (
    <Page
      title={title}
      description={query.data === undefined ? undefined : daySentence(query.data)}
    >
      <QueryView query={query}>{(day) => <DayView day={day} />}</QueryView>
    </Page>
  );
}

function DayView({ day }: { day: Day }) {
  if (day.figures.open === 0 && day.figures.handedOverThisWeek === 0)
    return (
      <Stack gap="md">
        <Empty
          title="No machine is here"
          hint="Take the first one in: the customer, the machine, what it does wrong, and the day you promise. Then this page shows what is due and whose move it is."
          action={
            <Button component={Link} to="/take-in" leftSection={<IconPlus size={20} aria-hidden />}>
              Take a machine in
            </Button>
          }
        />
        <BeforeFirst />
      </Stack>
    );
  return (
    <>
      <div className={classes.top}>
        <Figures figures={day.figures} />
        <WeekStrip day={day} />
      </div>
      <div className={classes.columns}>
        <div className={classes.promised}>
          <PromisedList
            title="Late"
            icon={<IconAlarm size={22} aria-hidden />}
            jobs={day.late}
            none="Nothing is late."
            urgent
          />
          <PromisedList
            title="Promised today"
            icon={<IconCalendarCheck size={22} aria-hidden />}
            jobs={day.today}
            none="Nothing is promised for today."
          />
          <PromisedList
            title="Promised soon"
            icon={<IconCalendarPlus size={22} aria-hidden />}
            jobs={day.soon}
            none="Nothing is promised for the days ahead."
          />
        </div>
        <SimpleGrid cols={1} spacing="md">
          <ToTellCard jobs={day.toTell} />
          <PartsTooLateCard jobs={day.partsTooLate} />
          {day.waiting
            .filter((group) => group.on !== 'nobody')
            .map((group) => (
              <WaitingOn key={group.on} on={group.on} jobs={group.jobs} />
            ))}
          <UncollectedCard />
        </SimpleGrid>
      </div>
    </>
  );
}
