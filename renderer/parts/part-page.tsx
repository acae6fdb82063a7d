import { SimpleGrid } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useParams } from 'react-router';
import { Card } from '../common/card.tsx';
import { deskQuery } from '../common/desk.ts';
import { Page, QueryView } from '../common/page.tsx';
import { MovementForm } from './movement-form.tsx';
import { FitsCard } from './part/fits-card.tsx';
import { KitCard } from './part/kit-card.tsx';
import { Movements } from './part/movements.tsx';
import { NumbersCard } from './part/numbers-card.tsx';
import { PartFacts } from './part/part-facts.tsx';
import { PhotosCard } from './part/photos-card.tsx';
import { PlaceCard } from './part/place-card.tsx';

/** One part: what it is, what is on the shelf, and how it came to that. */
export function PartPage() {
  const { id = '' } = useParams();
  const query = useQuery(deskQuery.parts.part.queryOptions({ input: { id } }));
  return (
    <QueryView query={query}>
      {(dossier) => {
        const { part, movements } = dossier;
        return (
          <Page
            key={part.id}
            title={part.description}
            description={
              dossier.current === null
                ? `Part ${part.number}`
                : `Part ${part.number}, bought today as ${dossier.current.number}`
            }
          >
            <SimpleGrid cols={{ base: 1, md: 2 }} spacing="md">
              <PartFacts part={part} />
              <Card title="On and off the shelf">
                <MovementForm part={part} />
              </Card>
              <NumbersCard dossier={dossier} />
              <PlaceCard dossier={dossier} />
              <FitsCard dossier={dossier} />
              <KitCard dossier={dossier} />
              <PhotosCard dossier={dossier} />
            </SimpleGrid>
            <Movements movements={movements} part={part} />
          </Page>
        );
      }}
    </QueryView>
  );
}
