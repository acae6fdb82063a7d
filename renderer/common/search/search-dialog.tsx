import { Modal } from '@mantine/core';
import { SearchBox } from './search-box.tsx';

/** Search from anywhere: what is typed, and what answers to it. */
export function SearchDialog({ opened, onClose }: { opened: boolean; onClose: () => void }) {
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      size="44rem"
      yOffset="10vh"
      padding={0}
      withCloseButton={false}
      title={null}
      aria-label="Search"
    >
      <SearchBox onClose={onClose} />
    </Modal>
  );
}
