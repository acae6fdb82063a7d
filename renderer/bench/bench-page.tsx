import { Page, Waiting } from '../common/page.tsx';

/** Stands in until the page is written. */
export function BenchPage() {
  return (
    <Page title="Bench">
      <Waiting />
    </Page>
  );
}
