/** Our sign: a tappet on its cam, the part that the program is named after. */
export function Sign({ size }: { size: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 40 40" aria-hidden focusable="false">
      <rect width="40" height="40" rx="9" fill="#0f6a71" />
      <path
        d="M20 37a8.5 8.5 0 0 1-8.5-8.5c0-3.6 2.6-5.4 4.4-7.6C17.300 19.200 18.500 17.500 20 17.500s2.700 1.700 4.100 3.400c1.800 2.200 4.400 4 4.400 7.600A8.500 8.500 0 0 1 20 37z"
        fill="#f6f3ed"
      />
      <circle cx="20" cy="28.500" r="3.200" fill="#0f6a71" />
      <path d="M12.500 12.500h15v4h-15zM17.500 3h5v9.500h-5z" fill="#f2b544" />
    </svg>
  );
}
