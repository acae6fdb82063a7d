import { Anchor, List, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { BackUpFile } from '../../../shared/contract/back-ups.ts';
import type { LongWorkId } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { rememberChoice } from '../../common/local-choice.ts';
import { QueryView } from '../../common/page.tsx';
import { ShopProvider } from '../../common/shop.tsx';
import { thisPlace } from '../places.ts';
import { BringBack } from './bring-back.tsx';
import { useWork } from './use-work.ts';
import { WorkProgress } from './work-progress.tsx';

/** On a new machine, before there is a shop: one that was elsewhere is opened here from its back-up. */
export function BringShopBack({ today }: { today: string }) {
  const shop = useQuery(deskQuery.office.shop.queryOptions({ input: {} }));
  const [place] = useState(thisPlace);
  return (
    <QueryView query={shop}>
      {(unnamed) => (
        <ShopProvider shop={{ ...unnamed, ...place }} today={today}>
          <Choose />
        </ShopProvider>
      )}
    </QueryView>
  );
}

function Choose() {
  const list = useQuery(deskQuery.office.backUps.queryOptions({ input: {} }));
  const [chosen, setChosen] = useState<string | null>(null);
  const [begun, setBegun] = useState<LongWorkId | null>(null);
  const { work } = useWork(begun);
  const done = work?.state === 'done';
  useEffect(() => {
    if (done) window.location.replace('/');
  }, [done]);
  if (work?.state === 'running' || done) return <WorkProgress work={work} />;
  return (
    <>
      {work !== undefined && <WorkProgress work={work} />}
      {list.data !== undefined && <FilesHere files={list.data.files} onChoose={setChosen} />}
      <BringBack
        key={chosen}
        by={null}
        listed={chosen}
        onBegun={({ id }, by) => {
          rememberChoice('station', by);
          setBegun(id);
        }}
      />
    </>
  );
}

/** Back-ups that were put into the data folder beforehand. */
function FilesHere(props: { files: readonly BackUpFile[]; onChoose: (fileName: string) => void }) {
  const { files, onChoose } = props;
  const format = useFormat();
  if (files.length === 0) return null;
  return (
    <>
      <Text mb={4}>These are in the data folder already:</Text>
      <List mb="md">
        {files.map(({ fileName, at }) => (
          <List.Item key={fileName}>
            <Anchor component="button" type="button" onClick={() => onChoose(fileName)}>
              {fileName}
            </Anchor>{' '}
            <Text span c="dimmed" size="sm">
              {format.instant(at)}
            </Text>
          </List.Item>
        ))}
      </List>
    </>
  );
}
