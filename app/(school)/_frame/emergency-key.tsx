'use client';

import { useRouter } from 'next/navigation';
import { useEffect } from 'react';

/** Alt and I lead to the emergency page from anywhere. With a second key, since a letter alone is typed by accident (WCAG 2.1.4). */
export function EmergencyKey() {
  const router = useRouter();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!event.altKey || event.ctrlKey || event.metaKey || event.code !== 'KeyI') return;
      event.preventDefault();
      router.push('/emergency');
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [router]);
  return null;
}
