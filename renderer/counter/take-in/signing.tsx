import { Box } from '@mantine/core';
import type { ComponentProps } from 'react';
import { SignatureField } from '../../common/signature-field.tsx';

interface SigningProps extends ComponentProps<typeof SignatureField> {
  /** Name by which the page finds the field to put the cursor in. */
  field: string;
}

/** A signature among other fields. */
export const Signing = ({ field, ...signature }: SigningProps) => (
  <Box data-field={field}>
    <SignatureField {...signature} />
  </Box>
);
