#!/usr/bin/env bash
# Asks a running service for its health and for the demo study: deploy/smoke.sh [base-url]
set -euo pipefail
base=${1:-http://localhost:8080}
curl -fsS "$base/actuator/health" | grep -q '"status":"UP"'
answer=$(curl -fsS "$base/v1/demo/request" | curl -fsS -H 'Content-Type: application/json' -d @- "$base/v1/sizing/system")
for part in duty topology controlPower braking supply conductors mounting billOfMaterials; do
    grep -q "\"$part\":" <<<"$answer" || { echo "the answer has no $part" >&2; exit 1; }
done
echo "the service at $base answers the demo study"
