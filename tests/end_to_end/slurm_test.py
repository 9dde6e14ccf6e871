#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
# A batch as a job array of a Slurm of one node, started here for itself:   slurm_test.py LAPWRIGHT SAMPLE_SESSIONS
# One worker is killed; the job behind the array does what is left and writes the summary, as README.md says.  Ends with 77
# (skipped) and the reason where Slurm is not installed or cannot be started.
import csv
import os
import pathlib
import shutil
import socket
import subprocess
import sys
import tempfile
import time

NEEDED = ("munged", "slurmctld", "slurmd", "sbatch", "squeue", "sinfo", "scontrol")
CONFIGURATION = """ClusterName=club
SlurmctldHost={host}(127.0.0.1)
SlurmctldPort={port}
SlurmdPort={node_port}
SlurmUser=root
AuthType=auth/munge
AuthInfo=socket={folder}/munge.socket
CredType=cred/munge
StateSaveLocation={folder}/state
SlurmdSpoolDir={folder}/spool
SlurmctldPidFile={folder}/slurmctld.pid
SlurmdPidFile={folder}/slurmd.pid
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
SelectType=select/cons_tres
SelectTypeParameters=CR_Core
AccountingStorageType=accounting_storage/none
JobAcctGatherType=jobacct_gather/none
MpiDefault=none
ReturnToService=2
MailProg=/bin/true
NodeName={host} NodeAddr=127.0.0.1 CPUs=2 State=UNKNOWN
PartitionName=main Nodes={host} Default=YES MaxTime=INFINITE State=UP
"""


def skip(why):
    print("skipped:", why)
    sys.exit(77)


def free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


class Cluster:
    def __init__(self, folder):
        self.folder = folder
        self.started = []
        host = socket.gethostname().split(".")[0]
        for name in ("state", "spool"):
            (folder / name).mkdir()
        (folder / "slurm.conf").write_text(CONFIGURATION.format(host=host, port=free_port(), node_port=free_port(),
                                                                folder=folder))
        (folder / "munge.key").write_bytes(os.urandom(128))
        (folder / "munge.key").chmod(0o600)
        self.environment = os.environ | {"SLURM_CONF": str(folder / "slurm.conf")}

    def __enter__(self):
        self.start("munged", "--foreground", "--force", f"--key-file={self.folder}/munge.key",
                   f"--socket={self.folder}/munge.socket", f"--pid-file={self.folder}/munge.pid",
                   f"--seed-file={self.folder}/munge.seed", f"--log-file={self.folder}/munge.log")
        self.wait("munged does not start", lambda: (self.folder / "munge.socket").exists())
        self.start("slurmctld", "-D")
        self.start("slurmd", "-D")
        self.wait("no node comes up", lambda: self.ask("sinfo", "-h", "-o", "%T") in ("idle", "mixed"), 60)
        return self

    def __exit__(self, *_):
        for process in reversed(self.started):
            process.terminate()
        for process in self.started:
            try:
                process.wait(10)
            except subprocess.TimeoutExpired:
                process.kill()

    def start(self, *words):
        with open(self.folder / f"{words[0]}.out", "wb") as log:
            self.started.append(subprocess.Popen(words, stdout=log, stderr=log, env=self.environment))

    def ask(self, *words):
        return subprocess.run(words, capture_output=True, text=True, env=self.environment).stdout.strip()

    def wait(self, why, is_so, seconds=20):
        for _ in range(seconds * 5):
            if is_so():
                return
            time.sleep(0.2)
        for log in sorted(self.folder.glob("*.out")):
            print(f"--- {log.name}:", log.read_text(errors="replace")[-1500:])
        skip(why)

    def submit(self, script, *options):
        path = self.folder / f"job{len(list(self.folder.glob('job*')))}"
        path.write_text("#!/bin/sh\n" + script)
        answer = subprocess.run(["sbatch", "--parsable", f"--output={self.folder}/%x-%A-%a.log", *options, str(path)],
                                capture_output=True, text=True, env=self.environment, cwd=self.folder)
        assert answer.returncode == 0, answer.stderr
        return answer.stdout.strip()


def main(program, samples):
    missing = [name for name in NEEDED if not shutil.which(name)]
    if missing:
        skip("not installed: " + ", ".join(missing))
    if os.geteuid() != 0:
        skip("starting a Slurm of one's own needs root")
    folder = pathlib.Path(tempfile.mkdtemp(prefix="lapwright-slurm-"))
    try:
        original = (samples / "dunlin-saturday-2.txt").read_bytes()
        files = [folder / f"run-{number}.txt" for number in range(5)]
        for number, path in enumerate(files):
            path.write_bytes(original + b"\n" * number)
        (folder / "list.txt").write_text("\n".join(map(str, files)) + "\n")
        (folder / "slurm").mkdir()
        batch = f'"{program}" batch "{folder}/list.txt" --every-pair --out "{folder}/results"'
        with Cluster(folder / "slurm") as cluster:
            array = cluster.submit('if [ "$SLURM_ARRAY_TASK_ID" = 2 ]; then kill -9 $$; fi\n'
                                   f"exec {batch} --shard $SLURM_ARRAY_TASK_ID/4\n", "--array=1-4")
            cluster.submit(f"exec {batch}\n", f"--dependency=afterany:{array}")
            summary = folder / "results" / "summary.csv"
            for _ in range(900):
                if summary.exists():
                    break
                time.sleep(0.2)
            assert summary.exists(), cluster.ask("squeue") + cluster.ask("scontrol", "show", "job")
        assert not (folder / "results" / "summary-2-of-4.csv").exists(), "the second worker was not killed"
        with open(summary, newline="") as file:
            rows = list(csv.DictReader(file, strict=True))
        results = [p for p in (folder / "results").iterdir() if p.suffix == ".json"]
        assert len(rows) == 10 and all(row["status"] == "done" for row in rows), rows
        assert sorted(row["result"] for row in rows) == sorted(p.name for p in results), results
        print("ten pairings, each once, by four workers of whom one was killed")
    finally:
        shutil.rmtree(folder, ignore_errors=True)


main(pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2]).resolve())
