import { Box } from '@mantine/core';
import { SignatureField, type SignatureValue } from '../../common/signature-field.tsx';

interface SigningProps {
  label: string;
  /** Name by which the page finds the field to put the cursor in. */
  field: string;
  value: SignatureValue | null;
  onChange: (signature: SignatureValue | null) => void;
  suggestedName: string;
  error?: string;
}

/** A signature among other fields: Enter in the empty one signs by the suggested name, and nothing else does. */
export function Signing({ field, ...signature }: SigningProps) {
  const { value, onChange, suggestedName } = signature;
  return (
    <Box
      data-field={field}
      data-own-enter
      onKeyDown={(event) => {
        if (event.key !== 'Enter' || event.ctrlKey || event.metaKey) return;
        if (!(event.target instanceof HTMLInputElement) || event.nativeEvent.isComposing) return;
        event.preventDefault();
        if (value === null && suggestedName !== '')
          onChange({ name: suggestedName, strokes: [], width: 400, height: 120 });
      }}
    >
      <SignatureField {...signature} />
    </Box>
  );
}
