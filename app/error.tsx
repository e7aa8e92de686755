'use client';

import { Button, ButtonLink } from './_components/ui/button';
import { Frame } from './_components/ui/frame';
import { PageHead } from './_components/ui/page-head';

interface ErrorPageProps { readonly error: Error & { readonly digest?: string }; readonly reset: () => void }

/** Shown when a page fails. What was typed is kept in the browser, so trying again loses nothing. */
export default function ErrorPage({ error, reset }: ErrorPageProps) {
  return (
    <Frame>
      <PageHead title="This page failed. The fault is ours." lead="What you entered is still in this browser. Try again; if it fails again, start from the first page." />
      <div className="actions">
        <Button kind="main" onClick={reset}>Try again</Button>
        <ButtonLink href="/">First page</ButtonLink>
      </div>
      <p className="small muted">{error.digest === undefined ? error.message : `Fault ${error.digest}`}</p>
    </Frame>
  );
}
