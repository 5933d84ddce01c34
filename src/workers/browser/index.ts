export { closeWorker, runAlone, runTask, type TaskWorker, taskWorker, WorkerFailed } from './run-task';
