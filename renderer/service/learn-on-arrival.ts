import {
  type EventBody,
  type EventName,
  learnWording,
  type RequestAnswer,
  type RequestName,
  type ServiceProblem,
} from '#shared-core';
import type { ConnectedService } from './connected-service.ts';

type Arrived = RequestAnswer<RequestName> | EventBody<EventName> | ServiceProblem;

/** The same service, whose sentences can be said in the language of the window before anybody is told of them. */
export function learnOnArrival(service: ConnectedService): ConnectedService {
  return {
    ...service,
    async request(name, body) {
      const answer = await service.request(name, body);
      learnFrom(answer.ok ? answer.value : answer.error);
      return answer;
    },
    on: (name, listener) =>
      service.on(name, (body) => {
        learnFrom(body);
        listener(body);
      }),
  };
}

/** What its sentences were made from comes along with it, with each run that it lists or opens, and with the problem that it tells. */
function learnFrom(arrived: Arrived): void {
  if ('wording' in arrived && arrived.wording !== undefined) learnWording(arrived.wording);
  if ('summary' in arrived) learnFrom(arrived.summary);
  if ('runs' in arrived) for (const run of arrived.runs) learnFrom(run);
  if ('problem' in arrived && arrived.problem !== null) learnFrom(arrived.problem);
}
