'use client';

import { useRouter } from 'next/navigation';
import { ScanLabel } from '@/app/_components/packs/scan-label';

/** Opens the page of a pack by the code on its label. */
export function OpenByLabel() {
  const router = useRouter();
  const open = (path: string): Promise<string> => {
    router.push(path);
    return Promise.resolve('Read. Its page opens.');
  };
  return <ScanLabel name="Scan a label" once otherwise="Or type the label into the field above." onPack={open} />;
}
