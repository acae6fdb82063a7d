import { Box } from '@mantine/core';
import { SignatureField, type SignatureValue } from '../../common/signature-field.tsx';

interface IntakeSignatureProps {
  value: SignatureValue | null;
  onChange: (signature: SignatureValue | null) => void;
  suggestedName: string;
  error?: string;
}

/** The customer's signature; Enter in the empty field signs by the customer's name, and nothing else does. */
export function IntakeSignature({ value, onChange, suggestedName, error }: IntakeSignatureProps) {
  return (
    <Box
      data-field="signature"
      data-own-enter
      onKeyDown={(event) => {
        if (event.key !== 'Enter' || event.ctrlKey || event.metaKey) return;
        if (!(event.target instanceof HTMLInputElement) || event.nativeEvent.isComposing) return;
        event.preventDefault();
        if (value === null && suggestedName !== '')
          onChange({ name: suggestedName, strokes: [], width: 400, height: 120 });
      }}
    >
      <SignatureField
        label="Customer’s signature"
        value={value}
        onChange={onChange}
        suggestedName={suggestedName}
        error={error}
      />
    </Box>
  );
}
