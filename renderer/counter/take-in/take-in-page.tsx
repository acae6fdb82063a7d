import { Page, Waiting } from '../../common/page.tsx';

/** Stands in until the page is written. */
export function TakeInPage() {
  return (
    <Page title="Take a machine in">
      <Waiting />
    </Page>
  );
}
