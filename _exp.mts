import { signedSample } from './tests/support/pdf/signed-sample.ts';
import { checkFile } from './lib/pdf/verify/check-file.ts';
const s=await signedSample(); const o={authorities:[s.school.authority.certificate]};
checkFile(s.signed,o); let t=Date.now(); for(let i=0;i<100;i++) checkFile(s.signed,o); console.log((Date.now()-t)/100,'ms', s.signed.length);
