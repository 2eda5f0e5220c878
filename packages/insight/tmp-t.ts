import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { factsFor, symbols } from '@tiegel/elements';
import { bind, evaluator, amountsOf } from '@tiegel/screening';
import { phaseFeatures } from '/work/main/packages/screening/src/models/phaseFeatures.ts';
import { fitPhaseModel, phaseProbabilities } from '/work/main/packages/insight/src/phase/fitPhaseModel.ts';
import { groupedFolds } from '/work/main/packages/insight/src/phase/groupedFolds.ts';
const facts = factsFor(symbols);
const ev = evaluator(bind(phaseFeatures.map(f=>f.formula), facts));
const al = publishedAlloys.filter(a=>a.phaseClass!==null);
const names=['fcc','bcc','both','other'];
const cls = al.map(a=>names.indexOf(a.phaseClass!));
const rows = al.map(a=>{const {members,amounts,total}=amountsOf(a.composition,facts);const into=new Float64Array(phaseFeatures.length);ev.evaluate(members,amounts,total,into);return [...into];});
console.log(rows.length, rows.flat().filter(x=>!Number.isFinite(x)).length);
const sys=al.map(a=>a.system);
let t=performance.now(); const out:number[][]=[];
for(let seed=0;seed<20;seed++){const f=groupedFolds(sys,cls,{folds:5,seed});
 const P:number[][]=[];
 for(let k=0;k<5;k++){const tr=f.flatMap((x,i)=>x!==k?[i]:[]);const m=fitPhaseModel(tr.map(i=>rows[i]!),tr.map(i=>cls[i]!));
  f.forEach((x,i)=>{if(x===k)P[i]=phaseProbabilities(rows[i]!,m)});}
 const p=P.map(q=>q[0]!+q[1]!),y=cls.map(c=>c<2?1:0);
 let auc=0,n1=0,n0=0;for(let i=0;i<p.length;i++)for(let j=0;j<p.length;j++)if(y[i]&&!y[j]){auc+=p[i]!>p[j]!?1:p[i]===p[j]?.5:0;}
 n1=y.filter(x=>x).length;n0=y.length-n1;auc/=n1*n0;const base=n1/y.length;
 const ll=-p.reduce((s,q,i)=>s+Math.log(y[i]?q:1-q),0)/p.length;const br=p.reduce((s,q,i)=>s+(q-y[i]!)**2,0)/p.length;
 const acc=P.filter((q,i)=>q.indexOf(Math.max(...q))===cls[i]).length/P.length;
 const one=P.filter((q,i)=>y[i]);const fb=cls.reduce((s,c,i)=>s+(c<2&&((P[i]![0]!>P[i]![1]!)===(c===0))?1:0),0)/n1;
 out.push([auc,ll,1-br/(base*(1-base)),acc,fb]);}
console.log(out[0]!.map((_,k)=>(out.reduce((s,r)=>s+r[k]!,0)/20).toFixed(4)), (performance.now()-t)/1000);
