import { SimpleGrid, TextInput, type TextInputProps } from '@mantine/core';

interface PartIdentityProps {
  numberHint: string;
  /** What a field shows and what becomes of what is typed into it. */
  words: (name: 'number' | 'barcode' | 'description') => TextInputProps;
}

/** What a part is known by: its number, its barcode, and what it is. */
export const PartIdentity = ({ numberHint, words }: PartIdentityProps) => (
  <>
    <SimpleGrid cols={{ base: 1, xs: 2 }} spacing="sm">
      <TextInput
        label="Number"
        description={numberHint}
        required
        maxLength={60}
        data-autofocus
        {...words('number')}
      />
      <TextInput
        label="Barcode"
        description="Scan it, if it has one"
        maxLength={60}
        {...words('barcode')}
        onKeyDown={(event) => {
          // A reader ends with Enter, and the sheet is not filled in yet.
          if (event.key === 'Enter') event.preventDefault();
        }}
      />
    </SimpleGrid>
    <TextInput label="What it is" required maxLength={200} {...words('description')} />
  </>
);
