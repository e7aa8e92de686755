'use client';

import { useRouter } from 'next/navigation';
import { useEffect } from 'react';

const EVERY_MS = 1000;

/** Looks again every second: by script without a jump of the page, else by the browser itself. @param address of this page */
export function LookAgain({ address }: { readonly address: string }) {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), EVERY_MS);
    return () => clearInterval(timer);
  }, [router]);
  return <noscript><meta httpEquiv="refresh" content={`2; url=${address}`} /></noscript>;
}
