import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import type { StaffId } from '../../shared/contract/ids.ts';
import type { Staff } from '../../shared/contract/office.ts';
import { rememberChoice, rememberedChoice } from './local-choice.ts';

/** Who is at this station: kept on this machine under `tappet.station`. */
interface Station {
  /** Who writes; null until somebody has been chosen. */
  staff: Staff | null;
  /** Everybody who may be chosen. */
  people: Staff[];
  choose: (id: StaffId) => void;
}

const StationContext = createContext<Station | null>(null);

export function StationProvider({ people, children }: { people: Staff[]; children: ReactNode }) {
  const [chosen, setChosen] = useState(() => rememberedChoice('station'));
  const station = useMemo((): Station => {
    const active = people.filter((person) => person.active);
    // Whoever was here and left is not simply taken for the one who is still there: that one is asked.
    const left = people.some((person) => person.id === chosen && !person.active);
    const alone = active.length === 1 && !left ? active[0] : undefined;
    return {
      staff: active.find((person) => person.id === chosen) ?? alone ?? null,
      people: active,
      choose: (id) => {
        rememberChoice('station', id);
        setChosen(id);
      },
    };
  }, [people, chosen]);
  return <StationContext value={station}>{children}</StationContext>;
}

export function useStation(): Station {
  const station = useContext(StationContext);
  if (station === null) throw new Error('useStation is called outside StationProvider.');
  return station;
}

/** Who writes: the `by` of every call. Pages are shown only once somebody has been chosen. */
export function useBy(): StaffId {
  const { staff } = useStation();
  if (staff === null) throw new Error('useBy is called before anybody is at the station.');
  return staff.id;
}
