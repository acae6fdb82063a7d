import { Page, Waiting } from '../../common/page.tsx';

/** Stands in until the page is written. */
export function DayPage() {
  return (
    <Page title="The day">
      <Waiting />
    </Page>
  );
}
