import { Modal, Text, Title } from '@mantine/core';
import { useEffect } from 'react';
import { useShop } from '../shop.tsx';
import classes from './choose-person.module.css';
import { PeopleList } from './people-list.tsx';
import { Sign } from './sign.tsx';

/** Before the first page: who is here. Every record names who made it. */
export function ChoosePersonPage() {
  const shop = useShop();
  useEffect(() => {
    document.title = 'Who is here? – Tappet';
  }, []);
  return (
    <main className={classes.page}>
      <div className={classes.card}>
        <Sign size={52} />
        <Title order={1} mt="sm">
          Who is at this station?
        </Title>
        <Text c="dimmed" mb="md">
          {shop.name}. Every reading, promise and payment says who made it. Tap your name, or press
          the number beside it.
        </Text>
        <PeopleList onChosen={nothing} />
      </div>
    </main>
  );
}

const nothing = () => {};

export function ChoosePersonDialog({ opened, onClose }: { opened: boolean; onClose: () => void }) {
  return (
    <Modal opened={opened} onClose={onClose} title="Who is at this station?" size="26rem">
      <PeopleList onChosen={onClose} />
    </Modal>
  );
}
