import { Button, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { type SyntheticEvent, useState } from 'react';
import type { StaffCost } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy, useStation } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './prices.module.css';

/** What an hour of each person costs: for the owner's eyes, and for the margin of clocked hours. */
export function StaffCostsCard() {
  const { staff } = useStation();
  const query = useQuery(deskQuery.till.staffCosts.queryOptions({ input: {} }));
  if (staff?.role !== 'owner') return null;
  return (
    <div className={classes.below}>
      <Card title="What an hour of each person costs">
        <Text size="sm" c="dimmed" mb="xs">
          For the margin of clocked hours. Where nothing stands, an hour costs what is set under
          Labour.
        </Text>
        <QueryView query={query}>
          {(costs) => costs.map((cost) => <CostRow key={cost.staffId} cost={cost} />)}
        </QueryView>
      </Card>
    </div>
  );
}

function CostRow({ cost }: { cost: StaffCost }) {
  const by = useBy();
  const [typed, setTyped] = useState<{ minor: number | null } | null>(null);
  const standing = cost.hourlyCost === 0 ? null : cost.hourlyCost;
  const save = useWrite(
    deskQuery.till.setStaffCost.mutationOptions({ onSuccess: () => setTyped(null) }),
  );
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    save.mutate({ by, staffId: cost.staffId, hourlyCost: typed?.minor ?? 0 });
  };
  return (
    <form onSubmit={send} className={classes.cost}>
      <MoneyInput
        label={cost.name}
        value={typed === null ? standing : typed.minor}
        placeholder="As set under Labour"
        onChange={(minor) => setTyped({ minor })}
      />
      <Button
        type="submit"
        variant="default"
        aria-label={`Save, ${cost.name}`}
        disabled={typed === null || (typed.minor ?? 0) === cost.hourlyCost}
        loading={save.isPending}
      >
        Save
      </Button>
      <RefusalAlert error={save.error} />
    </form>
  );
}
