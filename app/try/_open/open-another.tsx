'use client';

import { memo } from 'react';
import type { Ways } from '../_state/ways';
import { Chooser } from './chooser';
import { OwnDocument } from './own-document';

/** The ways to get a room onto the page. */
export const OpenAnother = memo(function OpenAnother({ here, ways }: { readonly here: string | null; readonly ways: Ways }) {
  return (
    <>
      <Chooser here={here} onChoose={(example) => ways.open(example.whole, { kind: 'example', example: example.id })} />
      <h3 className="after own-title">Or a document of your own</h3>
      <OwnDocument onOpen={(whole, name) => ways.open(whole, { kind: 'own', name })} />
    </>
  );
});
