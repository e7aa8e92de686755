import type { Metadata } from 'next';
import { EmergencyScreen } from './_parts/emergency-screen';
import { SMOKE } from './_parts/ways';

export const metadata: Metadata = { title: 'Everybody out' };

export default async function EmergencyPage({ searchParams }: { readonly searchParams: Promise<{ readonly at?: string }> }) {
  const { at } = await searchParams;
  return <EmergencyScreen way={SMOKE} at={at} />;
}
