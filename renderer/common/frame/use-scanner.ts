import { notifications } from '@mantine/notifications';
import { useEffect, useRef } from 'react';
import { useNavigate } from 'react-router';
import { desk } from '../desk.ts';
import { isTyping } from '../keyboard.ts';
import { refusalOf } from '../refusal.tsx';
import { snapshotOf } from './field-snapshot.ts';
import { scanReader } from './scan-reader.ts';

/** A field that wants what the reader sends for itself, such as a part's number, is marked so. */
const claimsCode = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('[data-claims-code]') !== null;

/**
 * Opens the job whose tag is scanned, wherever the focus is. A field that the reader typed into gets
 * back what it held; a tag of no job here leaves the page as it is and says so.
 */
export function useScanner(onOpen: () => void): void {
  const navigate = useNavigate();
  const opened = useRef(onOpen);
  opened.current = onOpen;

  useEffect(() => {
    const read = scanReader();
    let restore: (() => void) | null = null;

    const open = async (code: string) => {
      try {
        await desk.counter.job({ code });
        opened.current();
        await navigate(`/job/${code}`);
      } catch (error) {
        const refusal = refusalOf(error);
        notifications.show({
          color: 'red',
          title: `Scanned ${code}`,
          message:
            refusal.code === 'NOT_FOUND'
              ? 'No job here has this code. See whether the tag is from another shop or store.'
              : refusal.message,
          autoClose: 8_000,
        });
      }
    };

    const listen = (event: KeyboardEvent) => {
      if (claimsCode(event.target)) return;
      if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
      const step = read({ key: event.key, at: event.timeStamp });
      if (step.kind === 'first') restore = snapshotOf(event.target);
      // The digits of a tag are not the digits of a shortcut.
      if (step.kind === 'more' && !isTyping(event.target)) event.stopImmediatePropagation();
      if (step.kind !== 'scanned') return;
      event.preventDefault();
      event.stopImmediatePropagation();
      restore?.();
      restore = null;
      void open(step.code);
    };

    // Before any field or dialog sees the key.
    window.addEventListener('keydown', listen, { capture: true });
    return () => window.removeEventListener('keydown', listen, { capture: true });
  }, [navigate]);
}
