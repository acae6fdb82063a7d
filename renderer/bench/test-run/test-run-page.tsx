import { Empty, Page } from '../../common/page.tsx';

export function TestRunPage() {
  return (
    <Page title="Test run">
      <Empty title="Nothing here yet" hint="This stretch of the bench is being laid out." />
    </Page>
  );
}
