import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { EmergencyScreen } from '../_parts/emergency-screen';
import { wayOf } from '../_parts/ways';

interface WayPageProps {
  readonly params: Promise<{ readonly way: string }>;
  readonly searchParams: Promise<{ readonly at?: string }>;
}

export async function generateMetadata({ params }: WayPageProps): Promise<Metadata> {
  return { title: wayOf((await params).way)?.name };
}

export default async function WayPage({ params, searchParams }: WayPageProps) {
  const [{ way: part }, { at }] = await Promise.all([params, searchParams]);
  const way = wayOf(part);
  if (way === undefined) notFound();
  return <EmergencyScreen way={way} at={at} />;
}
