import { Empty, Page } from '../../common/page.tsx';

export function DecidePage() {
  return (
    <Page title="Decide">
      <Empty title="Nothing here yet" hint="This stretch of the bench is being laid out." />
    </Page>
  );
}
