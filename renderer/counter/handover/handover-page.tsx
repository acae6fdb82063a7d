import { Page, Waiting } from '../../common/page.tsx';

/** Stands in until the page is written. */
export function HandoverPage() {
  return (
    <Page title="Handover">
      <Waiting />
    </Page>
  );
}
