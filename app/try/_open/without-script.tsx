/** For a browser without scripts: what is missing, and the way that does without. */
export function WithoutScript() {
  return (
    <noscript>
      <div className="notice">
        <h3>This page works the room out in your browser, and needs scripts for it</h3>
        <p>Without them, the command line gives the same: <code>npm run --silent score -- public/examples/ordinary-classroom.json --text</code></p>
      </div>
    </noscript>
  );
}
