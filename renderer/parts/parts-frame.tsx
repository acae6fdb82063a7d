import { IconPackages } from '@tabler/icons-react';
import { type RoomPage, RoomPages } from '../common/room-pages.tsx';

/** One page a subject; each has its line here and its route in routes.tsx. */
const PAGES: readonly RoomPage[] = [
  { to: '/parts', label: 'Shelf', icon: IconPackages, within: ['/part/'] },
];

export const PartsFrame = () => <RoomPages label="Parts" pages={PAGES} />;
