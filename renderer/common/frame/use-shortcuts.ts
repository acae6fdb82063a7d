import { useEffect, useRef } from 'react';
import { useLocation, useNavigate } from 'react-router';
import { GO_KEYS, isTyping, JOB_KEYS } from '../keyboard.ts';

export interface FrameActions {
  search: () => void;
  help: () => void;
  station: () => void;
}

/** How long the letter after G may take. */
const SEQUENCE = 1_500;

/** The keys that work from anywhere; `keyboard.ts` lists them. */
export function useShortcuts(actions: FrameActions): void {
  const navigate = useNavigate();
  const { pathname } = useLocation();
  const now = useRef({ actions, pathname });
  now.current = { actions, pathname };

  useEffect(() => {
    let wentAt = Number.NEGATIVE_INFINITY;

    const go = (letter: string): string | undefined => {
      const page = JOB_KEYS.find((entry) => entry.key === letter);
      const job = /^\/job\/[^/]+/.exec(now.current.pathname)?.[0];
      if (page !== undefined && job !== undefined) return job + page.to;
      return GO_KEYS.find((entry) => entry.key === letter)?.to;
    };

    const act = (event: KeyboardEvent): (() => void) | undefined => {
      const { key } = event;
      const { search, help, station } = now.current.actions;
      if ((event.ctrlKey || event.metaKey) && !event.altKey && key.toLowerCase() === 'k')
        return search;
      if (event.ctrlKey || event.metaKey || event.altKey) return undefined;
      if (key === 'F2') return () => void navigate('/take-in');
      if (key === 'F4') return () => void navigate('/jobs');
      if (key === 'F8') return station;
      if (isTyping(event.target) || openDialog()) return undefined;
      if (key === '?') return help;
      const follows = event.timeStamp - wentAt < SEQUENCE;
      wentAt = key === 'g' && !follows ? event.timeStamp : Number.NEGATIVE_INFINITY;
      const to = follows ? go(key) : undefined;
      return to === undefined ? undefined : () => void navigate(to);
    };

    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.repeat) return;
      const action = act(event);
      if (action === undefined) return;
      event.preventDefault();
      action();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [navigate]);
}

const openDialog = (): boolean => document.querySelector('[role="dialog"]') !== null;
