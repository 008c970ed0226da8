import { readFileSync } from 'node:fs';
import { understandIn } from './support/understand-in.ts';
const [,, l, f] = process.argv;
for (const line of readFileSync(f!,'utf8').split('\n')) { if(!line.includes('|')) continue; const [c,...t]=line.split('|'); const text=t.join('|');
 const u=understandIn[l!]!(c==='null'?null:c!, text) as any;
 const vals=(u.inputs??[]).map((i:any)=>i.type==='answers'?i.answers.map((a:any)=>a.check+'='+(typeof a.value==='string'?a.value:JSON.stringify(a.value?.value??a.value))).join(' '):JSON.stringify(i)).join(' ; ');
 console.log(`${c} «${text}» → ${vals} ${u.talk??''} ${u.type??''} ${u.code??''} ${u.offers?JSON.stringify(u.offers.map((o:any)=>o.label)):''}`); }
