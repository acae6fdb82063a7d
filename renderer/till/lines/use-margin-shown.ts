import { useLocalStorage } from '@mantine/hooks';

/** Whether this machine's screen shows margins; everywhere on the page at once. */
export function useMarginShown(): [boolean, (shown: boolean) => void] {
  const [shown, setShown] = useLocalStorage({
    key: 'tappet.till.margins',
    defaultValue: false,
    getInitialValueInEffect: false,
  });
  return [shown, setShown];
}
