#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Checks a bag by RFC 8493 with nothing but unzip, sha256sum and openssl.
# usage: check_bag.sh FILE.zip|- FOLDER      ("-": the folder is unpacked already)
set -eu
[ "$1" = - ] || unzip -q "$1"
cd "$2"
printf 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n' | cmp - bagit.txt
sha256sum --check --strict --quiet manifest-sha256.txt
sha256sum --check --strict --quiet tagmanifest-sha256.txt
# Complete: what is there is what is listed.
find data -type f | LC_ALL=C sort > ../there
cut -c67- manifest-sha256.txt | LC_ALL=C sort > ../listed
cmp ../there ../listed
find . -type f ! -path './data/*' ! -name tagmanifest-sha256.txt | cut -c3- | LC_ALL=C sort > ../there
cut -c67- tagmanifest-sha256.txt | LC_ALL=C sort > ../listed
cmp ../there ../listed
# Payload-Oxum: bytes and number of payload files.
bytes=$(find data -type f -exec cat {} + | wc -c)
count=$(find data -type f | wc -l)
grep -qx "Payload-Oxum: $bytes.$count" bag-info.txt
if [ -d signature ]; then
  openssl pkeyutl -verify -pubin -inkey signature/public-key.pem -rawin \
    -in signature/signed-text.txt -sigfile signature/signature.bin
  { echo 'Evenfall signed bag 1'; grep -E ' (bag-info|bagit|manifest-sha256)\.txt$' tagmanifest-sha256.txt; } |
    cmp - signature/signed-text.txt
fi
