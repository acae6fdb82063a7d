import { useMemo, useState } from 'react';
import { Outlet } from 'react-router';
import { ForgottenClock } from '../clock/forgotten-clock.tsx';
import { SearchDialog } from '../search/search-dialog.tsx';
import { useStation } from '../station.tsx';
import { ChoosePersonDialog, ChoosePersonPage } from './choose-person.tsx';
import { ConnectionBanner } from './connection-banner.tsx';
import classes from './frame.module.css';
import { HelpSheet } from './help-sheet.tsx';
import { Rail } from './rail.tsx';
import { TopBar } from './top-bar.tsx';
import { useScanner } from './use-scanner.ts';
import { type FrameActions, useShortcuts } from './use-shortcuts.ts';

/** Around every page. Pages are shown once somebody is at the station, as every record names one. */
export function Frame() {
  const { staff } = useStation();
  return staff === null ? <ChoosePersonPage /> : <FrameAroundPage />;
}

type Sheet = 'search' | 'help' | 'station';

function FrameAroundPage() {
  const [sheet, setSheet] = useState<Sheet | null>(null);
  const close = useMemo(() => () => setSheet(null), []);
  const actions = useMemo(
    (): FrameActions => ({
      search: () => setSheet('search'),
      help: () => setSheet('help'),
      station: () => setSheet('station'),
    }),
    [],
  );
  useScanner(close);
  useShortcuts(actions);

  return (
    <div className={classes.frame}>
      <a href="#page" className={classes.skip}>
        Skip to the page
      </a>
      <Rail />
      <TopBar actions={actions} />
      <main id="page" tabIndex={-1} className={classes.main}>
        <ConnectionBanner />
        <ForgottenClock />
        <Outlet />
      </main>
      <SearchDialog opened={sheet === 'search'} onClose={close} />
      <HelpSheet opened={sheet === 'help'} onClose={close} />
      <ChoosePersonDialog opened={sheet === 'station'} onClose={close} />
    </div>
  );
}
