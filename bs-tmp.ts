import { edition1 } from '@/lib/content/edition-1';
import { bestSetsOf } from '@/lib/core/best-sets';
import { score } from '@/lib/core/score';
import { quickScore } from '@/lib/core/quick-score';
import { readFileSync } from 'node:fs';
for (const v of ['ordinary-classroom','bad-store','everything','good-hall']) { const doc=JSON.parse(readFileSync(`tests/reference-data/${v}.json`,'utf8'));
 for(let i=0;i<4;i++){const t=performance.now(); score(edition1,doc,{seed:1,draws:4000,inputHash:''}); const t2=performance.now(); quickScore(edition1,doc); console.log(v,'score',(t2-t).toFixed(0),'quick',(performance.now()-t2).toFixed(1));}
 const f=bestSetsOf(edition1,doc,{seed:1,draws:1000}); for(const b of [0,4,8,12,16,20,24,32,40,60]){const t=performance.now();const s=f(b);console.log(b,s.controls.length,s.effort,s.cut.toFixed(3),(performance.now()-t).toFixed(0)+'ms');} }
const empty={id:'x',title:'x',answers:{}}; const t=performance.now(); const r=score(edition1,empty,{seed:1,draws:4000,inputHash:''}); console.log('empty',(performance.now()-t).toFixed(0),r.stops.map(s=>s.id),r.totalHarm,r.doubt.slice(0,6).map(d=>[d.kind,d.id,d.between,d.harmLow.toFixed(1),d.harmHigh.toFixed(1)]));
const room=JSON.parse(readFileSync(`tests/reference-data/ordinary-classroom.json`,'utf8')); const q=score(edition1,room,{seed:1,draws:4000,inputHash:''}); console.log(q.doubt.slice(0,12).map(d=>[d.kind,d.id,d.harmLow.toFixed(1),d.harmHigh.toFixed(1)].join(' ')), q.bestSet, q.actions.slice(0,3), q.assumptions.length, JSON.stringify(q).length, q.doubt.length);
