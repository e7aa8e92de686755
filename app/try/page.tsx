import type { Metadata } from 'next';
import { exampleById } from './_open/example-list';
import './try.css';
import { TryRoom } from './try-room';

export const metadata: Metadata = { title: 'Try a room', description: 'See which risks remain in a charging room, how sure that is and what to do first. Nothing leaves your browser.' };

interface TryPageProps { readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>> }

export default async function TryPage({ searchParams }: TryPageProps) {
  const { example } = await searchParams;
  return <TryRoom exampleId={typeof example === 'string' ? exampleById(example)?.id ?? null : null} />;
}
