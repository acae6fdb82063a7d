import { nextNumber } from '../../../db/numbers.ts';
import { customerById } from '../../../db/queries/counter/customers.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { machineById } from '../../../db/queries/counter/machines.ts';
import { jobMove, job as jobTable } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { signed } from '../papers/head.ts';
import { claimTicket, tag } from '../papers/intake.ts';
import { issue } from '../papers/issue.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { insertCustomer } from './customers.ts';
import { giveMachineTo, insertMachine, machineWithSameSerial } from './machines.ts';
import { jobSearchText } from './search-text.ts';

export const takeIn = os.counter.takeIn.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, today, newId, note } = writing;
    if (input.promisedFor !== null && input.promisedFor < today)
      throw errors.PROMISED_IN_THE_PAST();

    const { which: _which, ...whoFacts } = input.customer;
    const customer =
      'id' in whoFacts
        ? found(customerById(store, whoFacts.id), 'customer')
        : insertCustomer(writing, whoFacts);

    const { which: _whichMachine, ...machineFacts } = input.machine;
    const twin = 'id' in machineFacts ? undefined : machineWithSameSerial(writing, machineFacts);
    if (twin)
      throw errors.SERIAL_TAKEN({ data: { machineId: twin.id, customerName: twin.customerName } });
    let machine =
      'id' in machineFacts
        ? found(machineById(store, machineFacts.id), 'machine')
        : insertMachine(writing, customer.id, machineFacts);
    if (machine.customerId !== customer.id) {
      if (!('changedHands' in machineFacts && machineFacts.changedHands))
        throw errors.OWNED_BY_ANOTHER({ data: { customerName: machine.customerName } });
      machine = giveMachineTo(writing, machine, customer);
    }
    const again = 'takeInAgain' in machineFacts && machineFacts.takeInAgain;
    if (machine.openJob !== null && !again)
      throw errors.ALREADY_IN_THE_SHOP({ data: { jobCode: machine.openJob } });

    const id = newId();
    const number = nextNumber(store, 'job');
    const signature = signed(input.signature, at);
    store
      .insert(jobTable)
      .values({
        id,
        number,
        customerId: customer.id,
        machineId: machine.id,
        engineId: machine.engine.id,
        state: 'taken-in',
        stateSince: at,
        stateNote: '',
        complaint: input.complaint,
        symptoms: input.symptoms,
        condition: input.condition,
        leftWith: input.leftWith,
        fuel: input.fuel,
        lastService: input.lastService,
        engineHours: input.engineHours,
        reachBy: input.reachBy,
        diagnosisFee: input.diagnosisFee,
        spendingLimit: input.spendingLimit,
        depositAgreed: input.deposit,
        promisedFor: input.promisedFor,
        takenInAt: at,
        takenInOn: today,
        takenInBy: staff.id,
        intakeSignature: signature,
        workDone: '',
        searchText: jobSearchText(number, customer, machine, input.complaint),
      })
      .run();
    store
      .insert(jobMove)
      .values({ id: newId(), jobId: id, to: 'taken-in', at, by: staff.id, note: '' })
      .run();

    const dossier = found(dossierOf(store, id), 'job');
    const papers = {
      claimTicket: issue(writing, id, claimTicket(writing, dossier, signature)),
      tag: issue(writing, id, tag(writing, dossier)),
    };
    note({
      job: id,
      number,
      customer: customer.id,
      machine: machine.id,
      claimTicket: papers.claimTicket.fingerprint,
    });
    return {
      jobId: dossier.id,
      number,
      code: dossier.code,
      customerId: customer.id,
      machineId: machine.id,
      ...papers,
    };
  }),
);
