import { Checkbox, Fieldset, Text } from '@mantine/core';
import { LINE_KIND_LABELS, LINE_KINDS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import { RateInput } from '../../common/rate-input.tsx';
import officeClasses from '../office.module.css';
import type { RulesForm } from './use-rules-form.ts';

/** Supplies are no share of themselves. */
const KINDS = LINE_KINDS.filter((kind) => kind !== 'supplies');

/** Rags, solvent and sealant: a share of the bill, at most a cap. */
export function SuppliesCard({ form }: { form: RulesForm }) {
  const { supplies } = form.fields;
  const error = form.errors['rules.supplies.kinds'];
  return (
    <Card title="Supplies">
      <Checkbox
        label="Supplies are charged as a share of the bill"
        description="A line of the kind ‘Supplies’ then works itself out; it can still be typed over"
        checked={supplies !== null}
        onChange={(event) =>
          form.set({
            supplies: event.currentTarget.checked
              ? { ppm: 50_000, kinds: ['labour'], cap: null }
              : null,
          })
        }
      />
      {supplies !== null && (
        <>
          <div className={officeClasses.fields}>
            <RateInput
              mt="sm"
              label="Share"
              value={supplies.ppm}
              onChange={(ppm) => form.set({ supplies: { ...supplies, ppm: ppm ?? 0 } })}
              error={form.errors['rules.supplies.ppm']}
            />
            <MoneyInput
              mt="sm"
              label="At most"
              placeholder="No cap"
              value={supplies.cap}
              onChange={(cap) => form.set({ supplies: { ...supplies, cap } })}
            />
          </div>
          <Fieldset
            variant="unstyled"
            mt="sm"
            legend={
              <Text size="sm" fw={500}>
                Of these lines
              </Text>
            }
          >
            <div className={officeClasses.kinds}>
              {KINDS.map((kind) => (
                <Checkbox
                  key={kind}
                  label={LINE_KIND_LABELS[kind]}
                  checked={supplies.kinds.includes(kind)}
                  onChange={(event) =>
                    form.set({
                      supplies: {
                        ...supplies,
                        kinds: KINDS.filter((one) =>
                          one === kind ? event.currentTarget.checked : supplies.kinds.includes(one),
                        ),
                      },
                    })
                  }
                />
              ))}
            </div>
          </Fieldset>
          {error !== undefined && (
            <Text size="sm" c="var(--mantine-color-error)">
              {error}
            </Text>
          )}
        </>
      )}
    </Card>
  );
}
