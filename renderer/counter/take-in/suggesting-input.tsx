import { Combobox, Text, TextInput, type TextInputProps, useCombobox } from '@mantine/core';
import { useState } from 'react';

export interface Suggestion {
  value: string;
  label: string;
  detail?: string;
}

interface SuggestingInputProps extends Omit<TextInputProps, 'onChange' | 'value'> {
  label: string;
  value: string;
  onChange: (text: string) => void;
  suggestions: readonly Suggestion[];
  onPick: (value: string) => void;
  /** Show the suggestions before anything is typed. */
  eager?: boolean;
  /** Wider than the field, where the field is narrow. */
  dropdownWidth?: number;
}

/**
 * A field for free text that offers what is known already. Going on with Tab or Enter keeps the text as
 * typed; only an arrow key or the pointer takes a suggestion.
 */
export function SuggestingInput({
  value,
  onChange,
  suggestions,
  onPick,
  eager = false,
  dropdownWidth,
  onBlur,
  onFocus,
  ...input
}: SuggestingInputProps) {
  const [wanted, setWanted] = useState(false);
  const combobox = useCombobox({
    opened: wanted && suggestions.length > 0,
    onOpenedChange: setWanted,
    onDropdownClose: () => combobox.resetSelectedOption(),
  });
  return (
    <Combobox
      store={combobox}
      position="bottom-start"
      width={dropdownWidth}
      onOptionSubmit={(picked) => {
        onPick(picked);
        combobox.closeDropdown();
      }}
    >
      <Combobox.Target autoComplete="off" withExpandedAttribute>
        <TextInput
          {...input}
          aria-autocomplete="list"
          value={value}
          onChange={(event) => {
            onChange(event.currentTarget.value);
            combobox.resetSelectedOption();
            setWanted(true);
          }}
          onFocus={(event) => {
            if (eager) setWanted(true);
            onFocus?.(event);
          }}
          onBlur={(event) => {
            // Also when nothing is open yet: suggestions may arrive after the field was left.
            setWanted(false);
            onBlur?.(event);
          }}
        />
      </Combobox.Target>
      <Combobox.Dropdown>
        <Combobox.Options
          aria-label={`Known: ${input.label}`}
          mah={280}
          style={{ overflowY: 'auto' }}
        >
          {suggestions.map((suggestion) => (
            <Combobox.Option key={suggestion.value} value={suggestion.value}>
              <Text size="sm" fw={600} style={{ overflowWrap: 'anywhere' }}>
                {suggestion.label}
              </Text>
              {suggestion.detail && (
                <Text size="xs" style={{ overflowWrap: 'anywhere' }}>
                  {suggestion.detail}
                </Text>
              )}
            </Combobox.Option>
          ))}
        </Combobox.Options>
      </Combobox.Dropdown>
    </Combobox>
  );
}
