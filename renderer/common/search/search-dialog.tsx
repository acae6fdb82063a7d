import { Modal } from '@mantine/core';
import { SearchBox } from './search-box.tsx';

/** Search from anywhere: what is typed, and what answers to it. */
export function SearchDialog({ opened, onClose }: { opened: boolean; onClose: () => void }) {
  return (
    <Modal.Root opened={opened} onClose={onClose} size="44rem" yOffset="10vh">
      <Modal.Overlay />
      <Modal.Content aria-label="Search">
        <Modal.Body p={0}>
          <SearchBox onClose={onClose} />
        </Modal.Body>
      </Modal.Content>
    </Modal.Root>
  );
}
