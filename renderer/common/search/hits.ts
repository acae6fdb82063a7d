import {
  IconArrowRight,
  IconBook2,
  IconClipboardList,
  IconEngine,
  IconPackage,
  IconUser,
  type TablerIcon,
} from '@tabler/icons-react';
import type { SearchHit } from '../../../shared/contract/counter/index.ts';
import { fold } from '../../../shared/work/fold.ts';
import { GO_KEYS } from '../keyboard.ts';

/** A line of the search: something in the store, or a page of the program. */
export interface Found {
  key: string;
  to: string;
  title: string;
  detail: string;
  /** What it is, in a word. */
  kind: string;
  icon: TablerIcon;
}

const KINDS: Record<
  SearchHit['kind'],
  { kind: string; icon: TablerIcon; to: (hit: SearchHit) => string }
> = {
  job: { kind: 'Job', icon: IconClipboardList, to: (hit) => `/job/${hit.reference}` },
  customer: { kind: 'Customer', icon: IconUser, to: (hit) => `/customer/${hit.id}` },
  machine: { kind: 'Machine', icon: IconEngine, to: (hit) => `/customer/${hit.reference}` },
  part: { kind: 'Part', icon: IconPackage, to: (hit) => `/part/${hit.id}` },
  'engine-model': { kind: 'Engine model', icon: IconBook2, to: (hit) => `/spec-book/${hit.id}` },
};

export function foundHit(hit: SearchHit): Found {
  const { kind, icon, to } = KINDS[hit.kind];
  return {
    key: `${hit.kind} ${hit.id}`,
    to: to(hit),
    title: hit.title,
    detail: hit.detail,
    kind,
    icon,
  };
}

const PAGES = [{ to: '/take-in', does: 'Take a machine in' }, ...GO_KEYS];

/** The pages whose name holds what was typed; all of them while nothing is. */
export function foundPages(typed: string): Found[] {
  const wanted = fold(typed);
  return PAGES.filter((page) => fold(page.does).includes(wanted)).map((page) => ({
    key: page.to,
    to: page.to,
    title: page.does,
    detail: '',
    kind: 'Page',
    icon: IconArrowRight,
  }));
}
