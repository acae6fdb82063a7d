import { Anchor, Button, FileButton, Group, Select, Stack, Text } from '@mantine/core';
import { IconFileSpreadsheet } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import { SupplierId } from '../../../shared/contract/ids.ts';
import { LARGEST_PRICE_FILE } from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { base64Of } from '../../common/file-bytes.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { useAddress } from '../../common/use-address.ts';
import { FileMapping } from './file-mapping.tsx';

/** A file that somebody chose on this machine. */
export interface ChosenFile {
  /** Tells two choices apart, of the same file too. */
  serial: number;
  name: string;
  /** Base64. */
  bytes: string;
}

/** A supplier's price file is chosen, looked at, and its columns are named before it is read. */
export function NewPriceFilePage() {
  const suppliers = useQuery(deskQuery.parts.suppliers.queryOptions({ input: {} }));
  return (
    <Page
      title="Read a price file"
      description={
        <Anchor inherit component={Link} to="/parts/price-files">
          Price lists
        </Anchor>
      }
    >
      <QueryView query={suppliers}>
        {(known) =>
          known.length === 0 ? (
            <Empty
              title="No supplier is known yet"
              hint="A price file belongs to a supplier. Add the supplier first, then come back."
              action={
                <Button component={Link} variant="light" to="/parts/suppliers">
                  Open the suppliers
                </Button>
              }
            />
          ) : (
            <Choose suppliers={known} />
          )
        }
      </QueryView>
    </Page>
  );
}

type Trouble = 'too-large' | 'unreadable' | null;

const TROUBLES = {
  'too-large': 'A price file here is 20 MB at most. Divide it, and read one part after the other.',
  unreadable: 'That file can’t be read from here. Copy it to this computer first.',
} as const;

function Choose({ suppliers }: { suppliers: readonly { id: SupplierId; name: string }[] }) {
  const [address, keep] = useAddress();
  const named = SupplierId.safeParse(address('supplier') ?? suppliers[0]?.id);
  const chosen = named.success ? suppliers.find(({ id }) => id === named.data) : undefined;
  const [file, setFile] = useState<ChosenFile | null>(null);
  const [trouble, setTrouble] = useState<Trouble>(null);
  const choose = async (picked: File | null) => {
    if (picked === null) return;
    setTrouble(null);
    if (picked.size > LARGEST_PRICE_FILE) {
      setTrouble('too-large');
      return;
    }
    try {
      const bytes = await base64Of(picked);
      setFile((before) => ({ serial: (before?.serial ?? 0) + 1, name: picked.name, bytes }));
    } catch {
      setTrouble('unreadable');
    }
  };
  return (
    <Stack>
      <Group align="flex-end">
        <Select
          label="Supplier"
          data={suppliers.map(({ id, name }) => ({ value: id, label: name }))}
          value={chosen?.id ?? null}
          onChange={(supplier) => keep({ supplier })}
          allowDeselect={false}
          searchable
          w="20rem"
        />
        <FileButton onChange={choose} accept=".csv,.txt,.tsv,.xlsx">
          {(button) => (
            <Button
              {...button}
              variant={file === null ? 'filled' : 'default'}
              leftSection={<IconFileSpreadsheet size={18} aria-hidden />}
            >
              {file === null ? 'Choose a file…' : 'Choose another file…'}
            </Button>
          )}
        </FileButton>
        {file !== null && <Text pb={8}>{file.name}</Text>}
      </Group>
      {trouble !== null && <Text role="alert">{TROUBLES[trouble]}</Text>}
      {file === null || chosen === undefined ? (
        <Text c="dimmed" maw="60ch">
          CSV and other text tables are read, and XLSX workbooks. The columns are proposed from the
          headings and from the supplier’s last file; you can change them before anything is read.
        </Text>
      ) : (
        <FileMapping key={`${chosen.id} ${file.serial}`} supplierId={chosen.id} file={file} />
      )}
    </Stack>
  );
}
