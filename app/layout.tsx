import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import '@fontsource-variable/atkinson-hyperlegible-next/wght-italic.css';
import './globals.css';
import type { Metadata, Viewport } from 'next';
import { headers } from 'next/headers';
import type { ReactNode } from 'react';
import { Sprite } from './_components/ui/sprite';

export const metadata: Metadata = {
  title: { default: 'Sandbucket', template: '%s · Sandbucket' },
  description: 'Shows, in writing and in numbers, whether charging, storing, flying, carrying and disposing of a team’s lithium packs is under control.',
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#e4d9c1' },
    { media: '(prefers-color-scheme: dark)', color: '#151413' },
  ],
};

export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  // Reading the headers makes every page render per request; only then can Next put this request's nonce on its scripts.
  await headers();
  return (
    <html lang="en-GB">
      <body>
        <Sprite />
        <a className="skip" href="#main">Skip to the content</a>
        {children}
      </body>
    </html>
  );
}
