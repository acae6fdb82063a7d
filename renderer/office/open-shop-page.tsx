import { Autocomplete, Button, SegmentedControl, Text, TextInput, Title } from '@mantine/core';
import { IconArrowBackUp, IconBuildingStore } from '@tabler/icons-react';
import { type SyntheticEvent, useEffect, useState } from 'react';
import { deskQuery } from '../common/desk.ts';
import { Sign } from '../common/frame/sign.tsx';
import { rememberChoice } from '../common/local-choice.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';
import { BringShopBack } from './back-ups/bring-shop-back.tsx';
import classes from './office.module.css';
import { CURRENCIES, TIME_ZONES, thisPlace } from './places.ts';

/** The first page of a store without a shop: a new one is opened, or one from elsewhere is brought back. */
export function OpenShopPage({ today }: { today: string }) {
  const [elsewhere, setElsewhere] = useState(false);
  const title = elsewhere ? 'Bring a shop back' : 'Open the shop';
  useEffect(() => {
    document.title = `${title} – Tappet`;
  }, [title]);
  return (
    <main className={classes.open}>
      <div className={classes.openSide}>
        <Sign size={64} />
        <h2>The paper behind the wrench.</h2>
        <ol>
          <li>Take a machine in and promise a day.</li>
          <li>Measure with a gauge, against a specification that has a source.</li>
          <li>Bill what was approved, and hand over a work order that both sides sign.</li>
        </ol>
      </div>
      <div className={classes.openForm}>
        <Title order={1}>{title}</Title>
        <Text c="dimmed" mb="md">
          {elsewhere
            ? 'With the file of a back-up, the shop goes on here where it was when that was made.'
            : 'Two names and it is open. The rest is taken from this computer; change it here or later in the office.'}
        </Text>
        {elsewhere ? <BringShopBack today={today} /> : <OpenShopForm />}
        <Button
          variant="default"
          mt="md"
          w="max-content"
          leftSection={
            elsewhere ? (
              <IconBuildingStore size={20} aria-hidden />
            ) : (
              <IconArrowBackUp size={20} aria-hidden />
            )
          }
          onClick={() => setElsewhere(!elsewhere)}
        >
          {elsewhere ? 'Open a new shop instead' : 'Bring a shop back from a back-up'}
        </Button>
      </div>
    </main>
  );
}

/** A name on the papers, and the first person who makes records. */
function OpenShopForm() {
  const [place] = useState(thisPlace);
  const [draft, setDraft, clear] = useDraft('open-shop', {
    shopName: '',
    ownerName: '',
    ...place,
  });
  const open = useWrite(
    deskQuery.office.openShop.mutationOptions({
      onSuccess: (owner) => {
        clear();
        rememberChoice('station', owner.id);
      },
    }),
  );
  const errors = fieldErrors(open.error);
  const set = (key: keyof typeof draft) => (value: string) =>
    setDraft((before) => ({ ...before, [key]: value }));
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    open.mutate({
      ...draft,
      currency: draft.currency.trim().toUpperCase(),
      country: draft.country.trim().toUpperCase(),
    });
  };

  return (
    <form onSubmit={submit}>
      <div className={classes.fields}>
        <TextInput
          label="Name of the shop"
          description="As it stands on every paper"
          className={classes.wide}
          required
          autoFocus
          value={draft.shopName}
          error={errors.shopName}
          onChange={(event) => set('shopName')(event.currentTarget.value)}
        />
        <TextInput
          label="Your name"
          description="The first on the staff list"
          className={classes.wide}
          required
          autoComplete="name"
          value={draft.ownerName}
          error={errors.ownerName}
          onChange={(event) => set('ownerName')(event.currentTarget.value)}
        />
        <Autocomplete
          label="Currency"
          size="md"
          limit={8}
          data={CURRENCIES}
          value={draft.currency}
          error={errors.currency}
          onChange={set('currency')}
        />
        <TextInput
          label="Country"
          description="Two letters; for telephone numbers"
          inputWrapperOrder={['label', 'input', 'description', 'error']}
          maxLength={2}
          value={draft.country}
          error={errors.country}
          onChange={(event) => set('country')(event.currentTarget.value)}
        />
        <Autocomplete
          label="Time zone"
          size="md"
          limit={8}
          data={TIME_ZONES}
          value={draft.timeZone}
          error={errors.timeZone}
          onChange={set('timeZone')}
        />
        <TextInput
          label="Language tag"
          description="How dates and amounts are written: en-US, en-GB, de-DE"
          inputWrapperOrder={['label', 'input', 'description', 'error']}
          value={draft.locale}
          error={errors.locale}
          onChange={(event) => set('locale')(event.currentTarget.value)}
        />
        <div className={classes.wide}>
          <Text id="paper-size" size="md" fw={600} mb={4}>
            Paper
          </Text>
          <SegmentedControl
            aria-labelledby="paper-size"
            data={['A4', 'Letter']}
            value={draft.paperSize}
            onChange={(paperSize) => setDraft((before) => ({ ...before, paperSize }))}
          />
        </div>
        <div className={classes.wide}>
          <RefusalAlert error={open.error} mb="sm" />
          <Button type="submit" size="md" h={46} loading={open.isPending}>
            Open the shop
          </Button>
        </div>
      </div>
    </form>
  );
}
