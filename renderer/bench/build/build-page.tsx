import { Empty, Page } from '../../common/page.tsx';

export function BuildPage() {
  return (
    <Page title="Build">
      <Empty title="Nothing here yet" hint="This stretch of the bench is being laid out." />
    </Page>
  );
}
