import {
  ActionIcon,
  Combobox,
  Group,
  Text,
  Textarea,
  useCombobox,
  VisuallyHidden,
} from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconX } from '@tabler/icons-react';
import { type KeyboardEvent, useState } from 'react';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { useMoney } from '../../common/shop.tsx';
import { mayBeNumber, partToSell, useFoundParts } from '../../parts/find-parts.ts';
import type { DraftLine } from './draft-line.ts';
import { cellName } from './grid-focus.ts';
import classes from './lines-grid.module.css';

interface DescriptionCellProps {
  line: DraftLine;
  label: string;
  problem: string | undefined;
  onDescribe: (description: string) => void;
  onPart: (part: Part) => void;
  onForgetPart: () => void;
  /** Enter on text that is no part: on to the next cell. */
  onEnter: () => void;
}

/** As many as fit below a line without hiding the bill. */
const OFFERED = 8;

/**
 * What a line is for. Parts are offered by number and words; Enter takes one only when an arrow key chose
 * it, or when the text is exactly its number or barcode, as a reader types it.
 */
export function DescriptionCell(props: DescriptionCellProps) {
  const { line, label, problem, onDescribe, onPart, onForgetPart, onEnter } = props;
  const money = useMoney();
  const [wanted, setWanted] = useState(false);
  const [typed] = useDebouncedValue(line.description, 150);
  const searched = wanted && line.partId === null && typed.trim().length >= 2;
  const found = useFoundParts(typed, OFFERED, searched);
  const parts = searched ? (found.data ?? []) : [];
  const combobox = useCombobox({
    opened: wanted && parts.length > 0,
    onOpenedChange: setWanted,
    onDropdownClose: () => combobox.resetSelectedOption(),
  });

  const take = (part: Part) => {
    combobox.closeDropdown();
    onPart(part);
  };

  const enter = async (event: KeyboardEvent<HTMLTextAreaElement>) => {
    const chosen = combobox.dropdownOpened && combobox.getSelectedOptionIndex() !== -1;
    if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing || chosen) return;
    event.preventDefault();
    const text = event.currentTarget.value;
    combobox.closeDropdown();
    // Without an answer from the desk the text stays what it is: words.
    const part =
      line.partId === null && mayBeNumber(text) ? await partToSell(text).catch(() => null) : null;
    if (part === null) onEnter();
    else take(part);
  };

  return (
    <>
      <Combobox
        store={combobox}
        width="target"
        onOptionSubmit={(id) => {
          const part = parts.find((each) => each.id === id);
          if (part !== undefined) take(part);
        }}
      >
        <Combobox.Target autoComplete="off">
          <Textarea
            minRows={1}
            maxRows={4}
            classNames={{ input: classes.cell, error: classes.spoken }}
            aria-label={label}
            aria-autocomplete="list"
            placeholder="Work, or a part’s number or name"
            value={line.description}
            error={problem}
            data-cell={cellName(line.key, 'description')}
            onChange={(event) => {
              // One line of the bill is one paragraph, also when it was pasted.
              onDescribe(event.currentTarget.value.replace(/\s*\n\s*/g, ' '));
              combobox.resetSelectedOption();
              combobox.openDropdown();
            }}
            onBlur={() => combobox.closeDropdown()}
            onKeyDown={enter}
          />
        </Combobox.Target>
        <Combobox.Dropdown>
          <Combobox.Options aria-label="Parts on the shelf" className={classes.offers}>
            {parts.map((part) => (
              <Combobox.Option key={part.id} value={part.id}>
                <Group justify="space-between" gap="md" wrap="nowrap">
                  <div>
                    <Text size="sm" fw={600}>
                      {part.description}
                    </Text>
                    <Text size="xs">
                      {part.number} · {formatQuantity(part.onHand)} {part.unit} on the shelf
                    </Text>
                  </div>
                  <Text size="sm" className={classes.figure}>
                    {money(part.sellsAt)}
                  </Text>
                </Group>
              </Combobox.Option>
            ))}
          </Combobox.Options>
        </Combobox.Dropdown>
      </Combobox>
      {/* A text of several lines can't be a combobox that tells whether it is open. */}
      <VisuallyHidden role="status">
        {combobox.dropdownOpened && `${parts.length} parts offered: arrow down to choose.`}
      </VisuallyHidden>
      {line.partId !== null && (
        <Group gap={2} wrap="nowrap">
          <Text size="xs" c="dimmed">
            Part {line.partNumber}
          </Text>
          <ActionIcon
            variant="subtle"
            color="gray"
            size={24}
            tabIndex={-1}
            aria-label={`${label}: not part ${line.partNumber}`}
            onClick={onForgetPart}
          >
            <IconX size={14} aria-hidden />
          </ActionIcon>
        </Group>
      )}
    </>
  );
}
