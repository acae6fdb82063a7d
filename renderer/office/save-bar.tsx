import { Button, Text } from '@mantine/core';
import classes from './office.module.css';

interface SaveBarProps {
  changed: boolean;
  saving: boolean;
  onReset: () => void;
}

/** Stays in sight below a long form, and says whether anything is still to be saved. */
export function SaveBar({ changed, saving, onReset }: SaveBarProps) {
  return (
    <div className={classes.save}>
      <Button type="submit" loading={saving} disabled={!changed}>
        Save
      </Button>
      {changed && (
        <Button variant="default" onClick={onReset}>
          Undo the changes
        </Button>
      )}
      <Text size="sm" c="dimmed" role="status">
        {changed ? 'Changed and not saved yet; it is kept on this computer.' : 'Nothing to save.'}
      </Text>
    </div>
  );
}
