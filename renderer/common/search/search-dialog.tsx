import { Modal } from '@mantine/core';
import { useRef } from 'react';
import { focusPage } from '../page-start.ts';
import { SearchBox } from './search-box.tsx';

/** Search from anywhere: what is typed, and what answers to it. */
export function SearchDialog({ opened, onClose }: { opened: boolean; onClose: () => void }) {
  const went = useRef(false);
  return (
    <Modal.Root
      opened={opened}
      onClose={onClose}
      size="44rem"
      yOffset="10vh"
      // Where something was opened the focus goes on to its page, and not back to where the search began.
      onExitTransitionEnd={() => {
        if (went.current) focusPage();
        went.current = false;
      }}
    >
      <Modal.Overlay />
      <Modal.Content aria-label="Search">
        <Modal.Body p={0}>
          <SearchBox
            onClose={onClose}
            onGo={() => {
              went.current = true;
            }}
          />
        </Modal.Body>
      </Modal.Content>
    </Modal.Root>
  );
}
