import { Text } from '@mantine/core';
import type { UseQueryResult } from '@tanstack/react-query';
import { useFormat } from './format.ts';

interface PhotoProps {
  card: { caption: string; by: string; at: string };
  /** The picture itself: it never changes, so that it is asked for once. */
  query: UseQueryResult<{ mediaType: string; bytes: string }>;
  size: 'xs' | 'sm';
  className?: string;
}

/** A photo with who took it and when, while it comes and when it doesn't. */
export function Photo({ card, query, size, className }: PhotoProps) {
  const format = useFormat();
  const words = `By ${card.by}, ${format.instant(card.at)}`;
  return (
    <figure className={className}>
      {query.data === undefined ? (
        <Text size="sm" role="status">
          {query.isError ? 'This photo could not be read.' : 'One moment'}
        </Text>
      ) : (
        <img
          src={`data:${query.data.mediaType};base64,${query.data.bytes}`}
          alt={card.caption === '' ? `Taken ${words.toLowerCase()}` : card.caption}
        />
      )}
      <Text component="figcaption" size={size} c="dimmed">
        {words}
      </Text>
    </figure>
  );
}
